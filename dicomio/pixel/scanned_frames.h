// The frames of a scanned file as core sees them: ultrasound and X-ray readers hand these out.
#pragma once

#include "core/cine/frame_source.h"
#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <memory>
#include <vector>

namespace gauge::dicomio {

/// Keeps the scan alive for as long as the frames live; nothing is decoded before a frame is asked for, and
/// no frame is kept.
/// @param scanned  not null. @param notices  deviations of the palette are appended.
/// @errors those of ColourReader::open.
core::Result<std::shared_ptr<const core::FrameSource>> openFrames(std::shared_ptr<const ScannedFile> scanned,
                                                                  std::vector<core::Notice>& notices);

} // namespace gauge::dicomio
