#include "tests/bench/compare/libraries.h"

#include <vtkCellArray.h>
#include <vtkFlyingEdges2D.h>
#include <vtkFlyingEdges3D.h>
#include <vtkImageData.h>
#include <vtkImageReslice.h>
#include <vtkImageThresholdConnectivity.h>
#include <vtkFloatArray.h>
#include <vtkMatrix4x4.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkShortArray.h>
#include <vtkSmartPointer.h>
#include <vtkStripper.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <vector>

namespace gauge::bench {
namespace {

/// An image over memory that is not its own.
template <class Array, class T>
vtkSmartPointer<vtkImageData> over(const T* values, std::size_t count, const Eigen::Vector3i& size, const Eigen::Vector3d& spacing,
                                   const Eigen::Vector3d& origin) {
    vtkNew<Array> array;
    array->SetArray(const_cast<T*>(values), static_cast<vtkIdType>(count), 1);
    auto image = vtkSmartPointer<vtkImageData>::New();
    image->SetDimensions(size.x(), size.y(), size.z());
    image->SetSpacing(spacing.x(), spacing.y(), spacing.z());
    image->SetOrigin(origin.x(), origin.y(), origin.z());
    image->GetPointData()->SetScalars(array);
    return image;
}

vtkSmartPointer<vtkImageData> ctOf(Stage& stage) {
    const core::Volume& v = stage.volume();
    static_assert(sizeof(short) == sizeof(std::int16_t));
    return over<vtkShortArray>(v.data(), v.voxelCount(), v.size(), v.edgesMm(), v.patientFromVoxel().translation());
}

/// Reslices along the frame of `grid`, its pixels centred about the frame's origin.
vtkSmartPointer<vtkImageReslice> reslice(vtkImageData* ct, const core::SectionGrid& grid, int threads) {
    auto filter = vtkSmartPointer<vtkImageReslice>::New();
    vtkNew<vtkMatrix4x4> axes;
    const Eigen::Vector3d normal = grid.frame.u.mm.cross(grid.frame.v.mm);
    for (int d = 0; d < 3; ++d) {
        axes->SetElement(d, 0, grid.frame.u.mm[d]);
        axes->SetElement(d, 1, grid.frame.v.mm[d]);
        axes->SetElement(d, 2, normal[d]);
        axes->SetElement(d, 3, grid.frame.origin.mm[d]);
    }
    filter->SetInputData(ct);
    filter->SetResliceAxes(axes);
    filter->SetInterpolationModeToLinear();
    filter->SetOutputSpacing(grid.pixelMm, grid.pixelMm, 1.0);
    filter->SetOutputOrigin(-0.5 * (grid.columns - 1) * grid.pixelMm, -0.5 * (grid.rows - 1) * grid.pixelMm, 0.0);
    filter->SetOutputExtent(0, grid.columns - 1, 0, grid.rows - 1, 0, 0);
    if (threads == 1) filter->SetEnableSMP(false); // its other way of sharing work takes no number
    filter->SetNumberOfThreads(threads);
    return filter;
}

double meanOf(vtkImageData& image) {
    vtkDataArray* values = image.GetPointData()->GetScalars();
    double sum = 0.0;
    for (vtkIdType i = 0; i < values->GetNumberOfTuples(); ++i)
        sum += values->GetTuple1(i);
    return sum / static_cast<double>(values->GetNumberOfTuples());
}

Contestant oblique(Stage& stage, int threads) {
    const core::SectionGrid grid = stage.obliqueGrid();
    return {"VTK, ImageReslice", threads, timed([ct = ctOf(stage), grid, threads] {
                const auto filter = reslice(ct, grid, threads);
                filter->Update();
                return [image = vtkSmartPointer<vtkImageData>(filter->GetOutput())] { return meanOf(*image); };
            })};
}

Contestant slabMaximum(Stage& stage) {
    const core::SectionGrid grid = stage.obliqueGrid();
    return {"VTK, ImageReslice with slab", 2, timed([ct = ctOf(stage), grid] {
                const auto filter = reslice(ct, grid, 2);
                filter->SetOutputSpacing(grid.pixelMm, grid.pixelMm, kSlabMm / (kSlabPlanes - 1));
                filter->SetSlabModeToMax();
                filter->SetSlabNumberOfSlices(kSlabPlanes);
                filter->Update();
                return [image = vtkSmartPointer<vtkImageData>(filter->GetOutput())] { return meanOf(*image); };
            })};
}

/// Parallel rays through the whole depth. Sums leave out what lies outside, so the values are given as HU + 1000, of which
/// nothing is nothing.
Contestant lineSums(Stage& stage) {
    const core::SectionGrid grid = stage.obliqueGrid();
    const core::Volume& volume = stage.volume();
    auto raised = std::make_shared<std::vector<std::int16_t>>(volume.data(), volume.data() + volume.voxelCount());
    for (auto& value : *raised)
        value = static_cast<std::int16_t>(value + 1000);
    const auto ct = over<vtkShortArray>(raised->data(), raised->size(), volume.size(), volume.edgesMm(),
                                        volume.patientFromVoxel().translation());
    return {"VTK, ImageReslice with slab sum", 2, timed([ct, raised, grid, planes = stage.sizes().slices] {
                const auto filter = reslice(ct, grid, 2);
                const double step = kProjectionMm / (planes - 1);
                filter->SetOutputSpacing(grid.pixelMm, grid.pixelMm, step);
                filter->SetBackgroundLevel(0.0);
                filter->SetOutputScalarType(VTK_FLOAT);
                filter->SetSlabModeToSum();
                filter->SetSlabNumberOfSlices(planes);
                filter->Update();
                return [image = vtkSmartPointer<vtkImageData>(filter->GetOutput()), step] { return 1e-3 * step * meanOf(*image); };
            })};
}

Contestant grow(Stage& stage) {
    const auto ct = ctOf(stage);
    double seed[3];
    const Eigen::Vector3i at = stage.chamberVoxel();
    for (int d = 0; d < 3; ++d)
        seed[d] = ct->GetOrigin()[d] + at[d] * ct->GetSpacing()[d];
    vtkNew<vtkPoints> seeds;
    seeds->InsertNextPoint(seed);
    return {"VTK, ImageThresholdConnectivity", 1, timed([ct, points = vtkSmartPointer<vtkPoints>(seeds)] {
                vtkNew<vtkImageThresholdConnectivity> filter;
                filter->SetInputData(ct);
                filter->SetSeedPoints(points);
                filter->ThresholdByUpper(kLevelHu);
                filter->SetInValue(1);
                filter->SetOutValue(0);
                filter->ReplaceInOn();
                filter->ReplaceOutOn();
                filter->Update();
                const auto count = static_cast<double>(filter->GetNumberOfInVoxels());
                return [image = vtkSmartPointer<vtkImageData>(filter->GetOutput()), count] { return count; };
            })};
}

double areaOf(vtkPolyData& mesh) {
    double area = 0.0;
    vtkNew<vtkIdList> ids;
    vtkCellArray* cells = mesh.GetPolys();
    cells->InitTraversal();
    while (cells->GetNextCell(ids)) {
        Eigen::Vector3d p[3];
        for (int i = 0; i < 3; ++i)
            mesh.GetPoint(ids->GetId(i), p[i].data());
        area += 0.5 * (p[1] - p[0]).cross(p[2] - p[0]).norm();
    }
    return area;
}

Contestant surface(Stage& stage) {
    return {"VTK, FlyingEdges3D", 2, timed([ct = ctOf(stage)] {
                vtkNew<vtkFlyingEdges3D> filter;
                filter->SetInputData(ct);
                filter->SetValue(0, kLevelHu);
                filter->ComputeNormalsOn();
                filter->ComputeGradientsOff();
                filter->ComputeScalarsOff();
                filter->Update();
                return [mesh = vtkSmartPointer<vtkPolyData>(filter->GetOutput())] { return areaOf(*mesh); };
            })};
}

/// Area and perimeter of the largest closed line, joined from segments by the stripper.
Contestant sectionContour(Stage& stage) {
    const core::SectionImage& p = stage.picture();
    const auto picture = over<vtkFloatArray>(p.values.data(), p.values.size(), Eigen::Vector3i(p.grid.columns, p.grid.rows, 1),
                                             Eigen::Vector3d::Ones(), Eigen::Vector3d::Zero());
    return {"VTK, FlyingEdges2D and Stripper", 1, timed([picture] {
                vtkNew<vtkFlyingEdges2D> filter;
                filter->SetInputData(picture);
                filter->SetValue(0, kLevelHu);
                filter->ComputeScalarsOff();
                vtkNew<vtkStripper> join;
                join->SetInputConnection(filter->GetOutputPort());
                join->JoinContiguousSegmentsOn();
                join->SetMaximumLength(1 << 20);
                join->Update();
                vtkPolyData* lines = join->GetOutput();
                double largest = 0.0, perimeter = 0.0;
                vtkNew<vtkIdList> ids;
                lines->GetLines()->InitTraversal();
                while (lines->GetLines()->GetNextCell(ids)) {
                    double twice = 0.0, length = 0.0;
                    for (vtkIdType i = 0; i < ids->GetNumberOfIds(); ++i) {
                        double a[3], b[3];
                        lines->GetPoint(ids->GetId(i), a);
                        lines->GetPoint(ids->GetId((i + 1) % ids->GetNumberOfIds()), b);
                        twice += a[0] * b[1] - a[1] * b[0];
                        length += std::hypot(b[0] - a[0], b[1] - a[1]);
                    }
                    if (std::abs(twice) > largest) {
                        largest = std::abs(twice);
                        perimeter = length;
                    }
                }
                return [=] { return 0.5 * largest + perimeter; };
            })};
}

} // namespace

Library vtk() {
    return {"VTK", true,
            {{Task::Oblique, [](Stage& s) { return oblique(s, 2); }},
             {Task::ObliqueOneCore, [](Stage& s) { return oblique(s, 1); }},
             {Task::SlabMaximum, slabMaximum},
             {Task::LineSums, lineSums},
             {Task::Grow, grow},
             {Task::Surface, surface},
             {Task::SectionContour, sectionContour}},
            {}};
}

} // namespace gauge::bench
