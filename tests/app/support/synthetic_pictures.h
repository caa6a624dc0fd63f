// Echo views and an X-ray run beside the synthetic CT, written down from formulas: frames are made when they are asked for.
//
//   echo frame  160 x 120 pixels, a tissue region of 0.5 mm a pixel over all of it; a dark gap of `widthMm` around the middle
//               column between bright walls; brightness of the top left pixel tells the frame
//   X-ray run   100 x 100 pixels, grey, 12 bits; RAO 30, CRA 20
#pragma once

#include "core/cine/echo_cine.h"
#include "dicomio/index/series_index.h"

#include <memory>

namespace gauge::fixture {

inline constexpr double kEchoPixelMm = 0.5;

std::shared_ptr<const core::FrameSource> echoFrames(int count, double widthMm);
std::shared_ptr<const core::FrameSource> xrayFrames(int count);

/// One calibrated cine of 20 frames, 40 ms apart, R waves at 100 and 900 ms.
core::EchoCine echoCine(const std::string& sopInstanceUid, double angleDeg, double widthMm);

/// The synthetic CT, echo views 2.25.200 to 2.25.203 (0, 45, 90 degrees, unknown) and a run 2.25.300 of the next day, and a
/// refused series.
std::shared_ptr<const dicomio::SeriesIndex> indexWithPictures();

} // namespace gauge::fixture
