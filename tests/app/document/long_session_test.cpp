// A session as long as no person works: 5,000 edits, all taken back one by one, and all done again.
#include "app/commands/entry_command.h"
#include "app/document/case_document.h"
#include "core/record/case_json.h"

#include <QTemporaryDir>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr int kEdits = 5000;
// An edit is kept three times (undo stack, journal, what waits for the disk), some 300 bytes each, and undoing journals it again:
// 10 kB leave room for strings and the allocator.
constexpr double kMostBytesAnEdit = 10'000.0;

core::Drawing width(int number) {
    core::Drawing drawing;
    drawing.role = core::DrawingRole::LandingWidth;
    drawing.site = core::PictureSite{"2.25.77", number % 20};
    drawing.points = {{0.25 * number, 12.5}, {0.25 * number + 20.0, 30.0}};
    drawing.label = "width " + std::to_string(number);
    return drawing;
}

void edit(CaseDocument& document, int number) {
    document.push(std::make_unique<EntryCommand<core::Drawing>>(document, QStringLiteral("Draw"), std::to_string(number % 40), width(number)));
}

double residentBytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmRSS:")) {
            std::istringstream words(line.substr(6));
            double kilobytes = 0;
            words >> kilobytes;
            return 1024.0 * kilobytes;
        }
    return 0.0;
}

} // namespace

TEST(LongSession, EveryEditIsTakenBackAndDoneAgain) {
    QTemporaryDir folder;
    CaseDocument document;
    document.keepUnsavedIn(folder.path());
    const core::CaseRecord empty = document.record();
    const double before = residentBytes();
    std::vector<core::CaseRecord> stations; // every thousandth
    for (int number = 0; number < kEdits; ++number) {
        edit(document, number);
        if (number % 1000 == 999) stations.push_back(document.record());
    }
    EXPECT_EQ(document.undoStack().count(), kEdits);
    const auto content = [](const core::CaseRecord& record) { // revisions go on; what the person sees does not
        std::map<std::string, core::Drawing> drawings;
        for (const auto& [id, entry] : record.drawings)
            drawings[id] = entry.content;
        return drawings;
    };
    for (int number = kEdits; number-- > 0;) {
        if (number % 1000 == 999) {
            ASSERT_EQ(content(document.record()), content(stations[static_cast<std::size_t>(number / 1000)])) << number;
        }
        ASSERT_TRUE(document.undoStack().canUndo());
        document.undoStack().undo();
    }
    EXPECT_FALSE(document.undoStack().canUndo());
    EXPECT_EQ(content(document.record()), content(empty));
    for (int number = 0; number < kEdits; ++number)
        document.undoStack().redo();
    EXPECT_EQ(content(document.record()), content(stations.back()));
    EXPECT_TRUE(document.flush());
    EXPECT_EQ(document.journal().entries().size(), 3u * kEdits) << "taking back and doing again are edits of the journal too";
    EXPECT_LT(residentBytes() - before, kMostBytesAnEdit * kEdits) << "bytes an edit: " << (residentBytes() - before) / kEdits;
}
