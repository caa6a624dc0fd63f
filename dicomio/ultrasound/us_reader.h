// From one ultrasound file (still or cine) to a core::EchoCine. Volumes: us_volume.h.
#pragma once

#include "core/cine/echo_cine.h"
#include "core/result.h"
#include "dicomio/scan/scanner.h"

#include <filesystem>
#include <memory>
#include <string_view>

namespace gauge::dicomio {

/// Ultrasound Image and Ultrasound Multi-frame Image Storage, their retired forms included (PS3.4 B.5).
bool isFlatUltrasound(std::string_view sopClassUid);

/// Headers now, frames when they are asked for.
/// @errors ObjectUnsupported for another kind of file, with what it is read with; those of the scanner and of
/// ColourReader::open. The message names the file.
core::Result<core::EchoCine> readUltrasound(const std::filesystem::path& path);

/// The same from a scan. @param scanned  not null.
core::Result<core::EchoCine> readUltrasound(std::shared_ptr<const ScannedFile> scanned);

} // namespace gauge::dicomio
