// The synthetic case's surface, from its volume alone: for views without the measuring engine.
#pragma once

#include "app/views/surface_view.h"

namespace gauge::fixture {

/// The surface halfway between blood and wall; what lies at x > 0 is appendage. Any coarseness gives the same.
app::SurfaceView::Maker syntheticSurfaceMaker();

} // namespace gauge::fixture
