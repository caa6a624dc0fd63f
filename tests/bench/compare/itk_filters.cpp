#include "tests/bench/compare/itk_filters.h"

#include "tests/bench/compare/large_block.h"

#include <itkBinaryThresholdImageFilter.h>
#include <itkConnectedComponentImageFilter.h>
#include <itkConnectedThresholdImageFilter.h>
#include <itkContourExtractor2DImageFilter.h>
#include <itkFastMarchingImageFilter.h>
#include <itkGDCMImageIO.h>
#include <itkImage.h>
#include <itkImageSeriesReader.h>
#include <itkImportImageFilter.h>
#include <itkLinearInterpolateImageFunction.h>
#include <itkResampleImageFilter.h>
#include <itkSignedMaurerDistanceMapImageFilter.h>

#include <algorithm>
#include <cmath>

namespace gauge::bench {
namespace {

using Ct = itk::Image<std::int16_t, 3>;
using Mask = itk::Image<std::uint8_t, 3>;
using Labels = itk::Image<std::uint32_t, 3>;
using Real = itk::Image<float, 3>;
using Picture = itk::Image<float, 2>;

template <class Image, class T>
typename Image::Pointer over(const T* values, const int* size, const double* spacing, const double* origin) {
    constexpr unsigned kAxes = Image::ImageDimension;
    auto import = itk::ImportImageFilter<T, kAxes>::New();
    typename Image::SizeType extent;
    typename Image::IndexType first{};
    std::size_t count = 1;
    for (unsigned d = 0; d < kAxes; ++d) {
        extent[d] = static_cast<itk::SizeValueType>(size[d]);
        count *= extent[d];
    }
    import->SetRegion({first, extent});
    import->SetSpacing(spacing);
    import->SetOrigin(origin);
    import->SetImportPointer(const_cast<T*>(values), count, false);
    import->Update();
    typename Image::Pointer image = import->GetOutput();
    image->DisconnectPipeline();
    return image;
}

template <class T> typename itk::Image<T, 3>::Pointer imageOf(const ItkBlock<T>& block) {
    return over<itk::Image<T, 3>>(block.values, block.size.data(), block.spacing.data(), block.origin.data());
}

/// The filter's result, set apart from it.
template <class Filter> auto resultOf(Filter& filter) {
    filter->Update();
    typename Filter::ObjectType::OutputImageType::Pointer image = filter->GetOutput();
    image->DisconnectPipeline();
    return image;
}

/// Sum of what `share` makes of each value, over 1000.
template <class Share> double sumOf(const Real& image, Share share) {
    const float* d = image.GetBufferPointer();
    double sum = 0.0;
    for (std::size_t i = 0; i < image.GetPixelContainer()->Size(); ++i)
        sum += share(d[i]);
    return 1e-3 * sum;
}

} // namespace

void setItkThreads(unsigned threads) {
    itk::MultiThreaderBase::SetGlobalDefaultNumberOfThreads(threads);
    itk::Object::GlobalWarningDisplayOff();
}

std::function<Check()> itkGrow(ItkBlock<std::int16_t> block, ItkNode seed, int level) {
    return [ct = imageOf(block), seed, level]() -> Check {
        auto filter = itk::ConnectedThresholdImageFilter<Ct, Mask>::New();
        filter->SetInput(ct);
        filter->SetLower(level);
        filter->SetUpper(32767);
        filter->SetReplaceValue(1);
        filter->SetSeed({{seed[0], seed[1], seed[2]}});
        const auto mask = resultOf(filter);
        return [mask] {
            const std::uint8_t* m = mask->GetBufferPointer();
            return static_cast<double>(std::count(m, m + mask->GetPixelContainer()->Size(), 1));
        };
    };
}

std::function<Check()> itkComponents(ItkBlock<std::int16_t> block, int level) {
    return [ct = imageOf(block), level]() -> Check {
        auto threshold = itk::BinaryThresholdImageFilter<Ct, Mask>::New();
        threshold->SetInput(ct);
        threshold->SetLowerThreshold(level);
        threshold->SetUpperThreshold(32767);
        threshold->SetInsideValue(1);
        threshold->SetOutsideValue(0);
        auto label = itk::ConnectedComponentImageFilter<Mask, Labels>::New();
        label->SetInput(threshold->GetOutput());
        const auto labels = resultOf(label);
        return [labels, count = label->GetObjectCount()] { return static_cast<double>(count); };
    };
}

std::function<Check()> itkDistanceOutside(ItkBlock<std::uint8_t> block) {
    return [mask = imageOf(block)]() -> Check {
        auto filter = itk::SignedMaurerDistanceMapImageFilter<Mask, Real>::New();
        filter->SetInput(mask);
        filter->SetSquaredDistance(false);
        filter->SetUseImageSpacing(true);
        const auto distance = resultOf(filter);
        return [distance] { return sumOf(*distance, [](float d) { return std::max(0.0f, d); }); };
    };
}

std::function<Check()> itkOblique(ItkBlock<std::int16_t> block, ItkPlane plane) {
    return [ct = imageOf(block), plane]() -> Check {
        auto filter = itk::ResampleImageFilter<Ct, Real>::New();
        filter->SetInput(ct);
        Real::DirectionType direction;
        for (int d = 0; d < 3; ++d) {
            direction(d, 0) = plane.u[d];
            direction(d, 1) = plane.v[d];
            direction(d, 2) = plane.normal[d];
        }
        filter->SetOutputDirection(direction);
        filter->SetOutputOrigin(plane.first.data());
        const double spacing[] = {plane.pixelMm, plane.pixelMm, 1.0};
        filter->SetOutputSpacing(spacing);
        filter->SetSize({{static_cast<itk::SizeValueType>(plane.columns), static_cast<itk::SizeValueType>(plane.rows), 1}});
        const auto image = resultOf(filter);
        return [image] { return 1e3 * sumOf(*image, [](float v) { return v; }) / (512.0 * 512.0); };
    };
}

std::function<Check()> itkSectionContour(const float* picture, int columns, int rows, int level) {
    const int size[] = {columns, rows};
    const double spacing[] = {1.0, 1.0}, origin[] = {0.0, 0.0};
    const auto image = over<Picture>(picture, size, spacing, origin);
    return [image, level]() -> Check {
        auto filter = itk::ContourExtractor2DImageFilter<Picture>::New();
        filter->SetInput(image);
        filter->SetContourValue(level);
        filter->Update();
        double largest = 0.0, perimeter = 0.0;
        for (unsigned n = 0; n < filter->GetNumberOfIndexedOutputs(); ++n) {
            const auto* vertices = filter->GetOutput(n)->GetVertexList();
            double twice = 0.0, length = 0.0;
            for (unsigned i = 0; i < vertices->Size(); ++i) {
                const auto &a = vertices->ElementAt(i), &b = vertices->ElementAt((i + 1) % vertices->Size());
                twice += a[0] * b[1] - a[1] * b[0];
                length += std::hypot(b[0] - a[0], b[1] - a[1]);
            }
            if (std::abs(twice) > largest) {
                largest = std::abs(twice);
                perimeter = length;
            }
        }
        return [=] { return 0.5 * largest + perimeter; };
    };
}

std::function<Check()> itkArrival(ItkBlock<float> block, ItkNode from, ItkNode to) {
    return [speed = imageOf(block), from, to]() -> Check {
        using Filter = itk::FastMarchingImageFilter<Real, Real>;
        auto filter = Filter::New();
        auto seeds = Filter::NodeContainer::New();
        Filter::NodeType seed;
        seed.SetValue(0.0);
        seed.SetIndex({{from[0], from[1], from[2]}});
        seeds->Initialize();
        seeds->InsertElement(0, seed);
        filter->SetInput(speed);
        filter->SetTrialPoints(seeds);
        const auto times = resultOf(filter);
        return [times, to] { return static_cast<double>(times->GetPixel({{to[0], to[1], to[2]}})); };
    };
}

std::function<Check()> itkLoad(std::vector<std::string> names) {
    return [names]() -> Check {
        auto reader = itk::ImageSeriesReader<Ct>::New();
        reader->SetImageIO(itk::GDCMImageIO::New());
        reader->SetFileNames(names);
        reader->ForceOrthogonalDirectionOff();
        const auto image = resultOf(reader);
        return [image] { return LargeBlock::meanOf(image->GetBufferPointer(), image->GetPixelContainer()->Size()); };
    };
}

} // namespace gauge::bench
