// The sentences, parts of sentences and words that core writes, as they stand there. Private to core_sentences.cpp.
#pragma once

#include <span>

namespace gauge::app {

/// A sentence or a part of one. Places are %1, %2…; `kinds` has one letter for each:
///   n  a number, with its unit      w  a word of the list        a  anything: a name, kept as it is
///   p  a part or word of the lists  q  the same, or kept as it is
struct CorePattern {
    const char* english;
    const char* kinds;
};

std::span<const CorePattern> sizingSentences();
std::span<const CorePattern> courseSentences(); ///< release, stasis, circulation
std::span<const CorePattern> imageSentences();  ///< CT, echo, X-ray
std::span<const CorePattern> accessSentences(); ///< crossing of the septum
std::span<const CorePattern> sentenceParts();
std::span<const char* const> coreWordList();

} // namespace gauge::app
