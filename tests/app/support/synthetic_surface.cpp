#include "tests/app/support/synthetic_surface.h"

#include "core/volume/iso_surface.h"

namespace gauge::fixture {

app::SurfaceView::Maker syntheticSurfaceMaker() {
    return [](const core::Volume& volume, const core::AppendageMeasurement&, const core::AppendageSurfaceOptions&,
              const core::WorkContext& work) -> core::Result<core::AppendageSurface> {
        auto mesh = core::isoSurface(volume, 210.0, work);
        if (!mesh) return tl::make_unexpected(mesh.error());
        core::AppendageSurface surface;
        surface.mesh = std::move(*mesh);
        core::calmNormals(surface.mesh, 2);
        for (const auto& p : surface.mesh.points)
            surface.beyondOstium.push_back(p.x() > 0.0f);
        return surface;
    };
}

} // namespace gauge::fixture
