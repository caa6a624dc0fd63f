// Sentences of core in the screen's language. Core writes whole English sentences, since the command line, files and DICOM
// objects are English; their facts alone would not make them again. Here the same sentences stand as patterns with places for
// numbers, names and words of the trade (core_sentence_list.h), one pattern for each sentence that core can write. A text is
// taken apart into its sentences, each is matched as a whole, and put together again from the translated pattern. A text that
// does not match stays English, whole: a warning is never half translated. Tests hold the patterns against core's sources.
#pragma once

#include "core/result.h"

#include <QString>
#include <optional>
#include <string>

namespace gauge::app {

/// A notice as shown on screen and in reports.
QString sentence(const core::Notice& notice);
/// The same for any text of core made of whole sentences (an act of "what next", a reason).
QString sentence(const std::string& text);
/// Nothing for a text that no patterns match.
std::optional<QString> knownSentence(const std::string& text);

/// A word or a part of a sentence: "ellipse through 3 echo widths", "common practice, no source", a method of measurement.
/// As it is where it is not known.
QString coreWords(const std::string& text);

} // namespace gauge::app
