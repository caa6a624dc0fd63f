// Files of one series that hold the same image again.
#pragma once

#include "core/parallel/progress.h"
#include "dicomio/index/file_facts.h"

#include <vector>

namespace gauge::dicomio {

/// Sets aside files that repeat another one: the same SOP Instance UID with the same geometry, either byte
/// for byte the same pixels, or the same object in another transfer syntax (then the less compressed one
/// stays). Files that claim the same UID with different pixels stay, so that the proof of geometry refuses
/// them. Where places still repeat, files compressed with loss are set aside if images without loss cover all
/// their places.
/// Ends early, with copies left in, on a stop.
/// @return notices that say what was set aside.
std::vector<core::Notice> setCopiesAside(std::vector<FileFacts>& files, const core::WorkContext& work);

} // namespace gauge::dicomio
