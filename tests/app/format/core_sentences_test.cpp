// The sentences of core stand a second time in app/format, as patterns to translate by. These tests hold the one against the
// other: no sentence of core without a pattern, no pattern that core does not write any more.
#include "app/format/core_sentences.h"

#include "app/format/core_sentence_list.h"
#include "app/format/language.h"
#include "core/echo/echo_study.h"
#include "core/pressure/haemodynamics.h"
#include "core/release/release_change.h"
#include "core/release/release_check.h"
#include "core/release/stasis.h"

#include <QCoreApplication>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <regex>

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

std::string contentOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

struct Source {
    fs::path file;
    std::string code;
};

/// The sources that write what patterns translate.
const std::vector<Source>& sources() {
    static const std::vector<Source> all = [] {
        std::vector<Source> found;
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(GAUGE_SOURCE_DIR) / "core"))
            if (entry.path().extension() == ".cpp" || entry.path().extension() == ".h")
                found.push_back({entry.path(), contentOf(entry.path())});
        return found;
    }();
    return all;
}

/// What stands between quotation marks in a piece of C++, put together without what is between.
std::string literalsOf(const std::string& code) {
    std::string all;
    bool inside = false, inComment = false;
    for (std::size_t i = 0; i < code.size(); ++i) {
        if (inComment) {
            inComment = code[i] != '\n';
        } else if (!inside && code[i] == '/' && i + 1 < code.size() && code[i + 1] == '/') {
            inComment = true;
        } else if (!inside && code[i] == '\'' && i + 2 < code.size() && (code[i + 2] == '\'' || code[i + 1] == '\\')) {
            i += code[i + 1] == '\\' ? 3 : 2; // a character
        } else if (code[i] == '"') {
            inside = !inside;
        } else if (inside && code[i] == '\\') {
            all += code[++i];
        } else if (inside) {
            all += code[i];
        }
    }
    return all;
}

const std::string& allLiterals() {
    static const std::string all = [] {
        std::string joined;
        for (const Source& source : sources())
            joined += literalsOf(source.code) + "\n";
        return joined;
    }();
    return all;
}

/// Whether a text can be laid out in at most that many pieces that stand in core: a sentence with a word chosen in its middle
/// stands there in pieces.
bool stands(std::string_view text, int pieces) {
    if (text.empty()) return true;
    if (pieces == 0) return false;
    for (std::size_t length = text.size(); length > 0; --length)
        if (allLiterals().find(text.substr(0, length)) != std::string::npos) return stands(text.substr(length), pieces - 1);
    return false;
}

std::vector<std::string> fragmentsOf(const std::string& pattern) {
    std::vector<std::string> all{""};
    for (std::size_t i = 0; i < pattern.size(); ++i)
        if (pattern[i] == '%' && i + 1 < pattern.size() && std::isdigit(static_cast<unsigned char>(pattern[i + 1]))) {
            ++i;
            all.emplace_back();
        } else {
            all.back() += pattern[i];
        }
    return all;
}

void expectWrittenByCore(const std::string& pattern) {
    // Units are part of the number here and part of the sentence there.
    static const std::regex kUnits(R"( (mmHg|mm|HU|cm/s|degrees|%))");
    for (std::string fragment : fragmentsOf(pattern)) {
        constexpr std::size_t kShort = 8; // ", ", " of ", " (%": glue
        if (fragment.size() < kShort) continue;
        constexpr int kPieces = 4;
        EXPECT_TRUE(stands(fragment, kPieces)) << "core does not write \"" << fragment << "\" of \"" << pattern << '"';
    }
}

void expectKnown(const std::string& text) {
    EXPECT_TRUE(knownSentence(text)) << text;
    EXPECT_EQ(sentence(text).toStdString(), text) << "in English a sentence is what core wrote";
}

void expectKnown(const std::vector<core::Notice>& notices, std::size_t atLeast) {
    EXPECT_GE(notices.size(), atLeast);
    for (const core::Notice& notice : notices)
        expectKnown(notice.text);
}

core::ReleaseState lookOf(core::Stage stage, double change) {
    using Q = core::ReleaseQuantity;
    core::ReleaseState state;
    state.stage = stage;
    const auto see = [&](Q quantity, double value, const char* side) {
        state.findings.push_back({quantity, value, 0.2, "45 degrees", side, "Reader A", ""});
    };
    see(Q::ShareBeyondCircumflex, 40.0, "");
    see(Q::ImplantWidth, 26.9, "");
    see(Q::JetWidth, 6.0 + change, "ridge side");
    see(Q::ClearanceMitralAnnulus, 1.0, "");
    see(Q::MitralGradient, 9.0 + change, "");
    see(Q::VeinFlowFree, change > 0.0 ? 0.0 : 1.0, "");
    see(Q::DeviceThrombus, 1.0, "");
    see(Q::Effusion, 4.0 + change, "");
    see(Q::GapBeforePull, 0.5, "ridge side");
    see(Q::GapAfterPull, 4.5, "ridge side");
    see(Q::LobeToNeckAngle, 45.0, "");
    return state;
}

} // namespace

TEST(CorePatterns, AreWhatCoreWrites) {
    for (const auto& list : {sizingSentences(), courseSentences(), imageSentences(), sentenceParts()})
        for (const CorePattern& pattern : list)
            expectWrittenByCore(pattern.english);
    for (const char* word : coreWordList())
        EXPECT_TRUE(stands(word, 2)) << "core does not write \"" << word << '"';
}

// Each notice of these rooms: the longest piece of its first sentence stands in a pattern.
TEST(CorePatterns, HoldEveryNoticeOfCore) {
    std::string patterns;
    for (const auto& list : {sizingSentences(), courseSentences(), imageSentences()})
        for (const CorePattern& pattern : list)
            patterns += std::string(pattern.english) + "\n";
    // {"code", and what follows it up to the end of the statement.
    const std::regex notice(R"raw(\{\s*"([a-z0-9]+(?:-[a-z0-9]+)+)",\s*((?:[^;{}]|\n){0,900}))raw");
    int found = 0;
    for (const Source& source : sources()) {
        const std::string room = source.file.parent_path().filename().string();
        if (source.file.extension() != ".cpp" || room == "record" || room == "units") continue;
        for (auto it = std::sregex_iterator(source.code.begin(), source.code.end(), notice); it != std::sregex_iterator(); ++it) {
            const std::string code = (*it)[1], after = (*it)[2];
            if (source.code.find("Notice") == std::string::npos) continue;
            std::string longest;
            for (const std::string& piece : [&] {
                     std::vector<std::string> pieces;
                     std::string now;
                     bool inside = false, wasLiteral = false;
                     for (std::size_t i = 0; i < after.size(); ++i) {
                         const char c = after[i];
                         if (inside && c == '\\') {
                             now += after[++i];
                         } else if (c == '"') {
                             inside = !inside;
                             wasLiteral = true;
                         } else if (inside) {
                             now += c;
                         } else if (!std::isspace(static_cast<unsigned char>(c)) && wasLiteral) {
                             pieces.push_back(std::exchange(now, {}));
                             wasLiteral = false;
                         }
                     }
                     pieces.push_back(now);
                     return pieces;
                 }())
                if (piece.size() > longest.size()) longest = piece;
            if (longest.find(' ') == std::string::npos || longest.size() < 15) continue; // no sentence
            ++found;
            // Up to the end of the first sentence in the piece, and without a unit at its start.
            std::string first = longest.substr(0, longest.find(". "));
            first = first.substr(0, first.find_last_not_of(' ') + 1);
            first = std::regex_replace(first, std::regex(R"(^ ?(mmHg|mm|HU|cm/s|degrees|%))"), "");
            EXPECT_THAT(patterns, HasSubstr(first)) << code << " in " << source.file.filename();
        }
    }
    EXPECT_GT(found, 45);
}

TEST(KnownSentence, TakesEveryNoticeOfARelease) {
    core::ReleaseLimits limits;
    limits.nominalMm = 27.0;
    limits.compressionPercent = {8.0, 20.0, core::RangeBasis::Chart};
    const auto before = lookOf(core::Stage::DeployedAttached, 0.0), after = lookOf(core::Stage::AfterRelease, 2.0);
    for (const auto& state : {before, after}) {
        const auto report = core::checkRelease(state, limits);
        ASSERT_TRUE(report) << report.error().message;
        expectKnown(report->notices, 6);
        for (const core::ReleaseRow& row : report->rows)
            EXPECT_EQ(coreWords(row.what).toStdString(), row.what);
    }
    const auto changes = core::compareReleases(before, after);
    ASSERT_TRUE(changes);
    expectKnown(core::changeNotices(*changes), 3);
}

TEST(KnownSentence, TakesEveryJudgementOfStasisAndCirculation) {
    using core::Stage;
    core::StasisFinding early, late;
    early.stage = Stage::BeforeProcedure;
    early.thrombus = true;
    early.sludge = true;
    early.echoContrastGrade = 1;
    early.seenBy = "Reader A";
    early.enhancementRatio = 0.3;
    early.enhancementPhase = core::EnhancementPhase::Delayed;
    late.stage = Stage::AfterRepair;
    late.thrombus = false;
    late.echoContrastGrade = 4;
    late.emptyingVelocityCmPerS = 12.0;
    late.enhancementRatio = 0.6;
    for (const bool gone : {false, true}) {
        std::vector<core::StasisFinding> findings{early};
        if (gone) findings.push_back(late);
        const auto judged = core::judgeStasis(findings, true);
        expectKnown(judged.warnings, 2);
        expectKnown(judged.notices, 1);
    }
    core::HaemodynamicState before, after;
    before.state = "baseline";
    before.stage = Stage::BeforeRepair;
    before.meanPressureMmHg = 12.0;
    before.rhythm = core::Rhythm::Sinus;
    before.ventilation = core::Ventilation::Spontaneous;
    before.regurgitation = core::RegurgitationGrade::Severe;
    after = before;
    after.state = "after";
    after.stage = Stage::AfterRepair;
    after.meanPressureMmHg = 75.0;
    after.vWaveMmHg = 20.0;
    after.meanMitralGradientMmHg = 80.0;
    after.heartRatePerMinute = 300.0;
    after.rhythm = core::Rhythm::AtrialFibrillation;
    after.ventilation = core::Ventilation::Controlled;
    after.regurgitation = core::RegurgitationGrade::Mild;
    after.pulmonaryVeinFlow = core::PulmonaryVeinFlow::Reversed;
    expectKnown(core::plausibility(after), 6);
    expectKnown(core::changes(before, after), 4);
}

TEST(KnownSentence, TakesSentencesWithNumbersNamesAndSeveralParts) {
    expectKnown("The state \"day 1. of two\" was read at 7.5 mmHg; the chart wants at least 12 mmHg. Measure again after filling, if "
                "the treating team judges filling safe.");
    expectKnown("Undersized if the pressure returns (cause: passing): 2D echo after the repair (state \"m2\") read 18.4 mm at 7 mmHg; "
                "from that reading alone size 21 would be chosen. At 18 mmHg the appendage is expected to be 22.1 mm wide (95 % 20.1 "
                "to 24.9 mm): size 21 would then be narrower than the appendage by 1.1 mm and be too small with a chance of above "
                "99 %. All readings together give size 27 the greatest fit chance at 12 mmHg (63 %, against below 1 % for size 21).");
    expectKnown("CT of the state \"CT\" (longest diameter of the ostium, contour, 24.0 mm) is shown with weight 0: It is the longest "
                "diameter of the ostium, another quantity than the perimeter-derived diameter of the landing zone asked for.");
    EXPECT_EQ(coreWords("ellipse through 4 echo widths, ovality corrected for noise"),
              "ellipse through 4 echo widths, ovality corrected for noise");
}

TEST(KnownSentence, LeavesWhatItDoesNotKnowWholeAndEnglish) {
    const std::string half = "Measure it. This sentence was never written by core.";
    EXPECT_FALSE(knownSentence(half));
    EXPECT_EQ(sentence(half).toStdString(), half);
    EXPECT_EQ(coreWords("nothing that core says"), "nothing that core says");
}

TEST(Sentence, IsInTheLanguageOfTheScreen) {
    int count = 0;
    char* none[] = {nullptr};
    std::unique_ptr<QCoreApplication> application;
    if (!QCoreApplication::instance()) application = std::make_unique<QCoreApplication>(count, none);
    {
        const ScreenLanguage german(QStringLiteral("de"));
        EXPECT_EQ(sentence(std::string("Left atrial pressure measured directly in the state \"m1\".")).toStdString(),
                  "Linksatrialer Druck im Zustand „m1“ direkt gemessen.");
        EXPECT_EQ(coreWords("common practice, no source"), "übliche Praxis, ohne Quelle");
        EXPECT_EQ(sentence(std::string("The beam is tilted by 20 degrees to the appendage's axis; the directions of the widths were "
                                       "corrected for it."))
                      .toStdString(),
                  "Der Strahl ist um 20 Grad zur Achse des Vorhofohrs gekippt; die Richtungen der Weiten wurden dafür korrigiert.");
    }
    const ScreenLanguage french(QStringLiteral("fr"));
    EXPECT_THAT(sentence(std::string("Stasis in the appendage after the repair (seen by Ada): sludge, echo contrast grade 4. Exclude "
                                     "thrombus before anything enters it."))
                    .toStdString(),
                HasSubstr("Stase dans l’auricule (après la réparation (vu par Ada)) : boue"));
}

TEST(CoreSentences, SayAMomentThatIsNamedAfterItsStageOnce) {
    EXPECT_EQ(sentence(std::string("A heart rate of 300 1/min (after the repair, state \"After the repair\") lies outside 20 to 250.")).toStdString(),
              "A heart rate of 300 1/min (after the repair) lies outside 20 to 250.");
    EXPECT_EQ(sentence(std::string("A heart rate of 300 1/min (after the repair, state \"second look\") lies outside 20 to 250.")).toStdString(),
              "A heart rate of 300 1/min (after the repair, state \"second look\") lies outside 20 to 250.");
    EXPECT_EQ(sentence(std::string("x of the state \"After the repair\" (after the repair) was not measured (twice).")).toStdString(),
              "x of the state \"After the repair\" was not measured (twice).");
}
