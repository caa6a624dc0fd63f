// Edits a case as fast as it goes until it is killed:  case_child file X.case.json SEED | case_child lone FOLDER SEED
// Prints each line at once: "done N DIGEST" after an edit (digest of the whole record), "saved N" when N was reported saved.
#include "core/record/case_checksum.h"
#include "tests/app/document/case_edits.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QTimer>
#include <cstdio>
#include <unistd.h>

using namespace gauge;

namespace {

void print(const std::string& line) {
    std::ignore = ::write(STDOUT_FILENO, line.data(), line.size());
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    if (argc != 4) return 2;
    const QString place = QString::fromLocal8Bit(argv[2]);
    std::mt19937 random(static_cast<unsigned>(std::stoul(argv[3])));
    app::CaseDocument document;
    QObject::connect(&document, &app::CaseDocument::saved, [](quint64 n) { print("saved " + std::to_string(n) + "\n"); });
    QObject::connect(&document, &app::CaseDocument::savingFailed, [](const QString& m) { print("failed " + m.toStdString() + "\n"); });
    if (std::string(argv[1]) == "lone") {
        document.keepUnsavedIn(place);
    } else if (QFileInfo::exists(place)) {
        if (const auto opened = document.open(place); !opened || document.isReadOnly()) {
            print("cannot open " + (opened ? document.readOnlyReason().toStdString() : opened.error().message) + "\n");
            return 1;
        }
    } else if (const auto made = document.saveAs(place); !made) {
        print("cannot save " + made.error().message + "\n");
        return 1;
    }
    print("begun " + std::to_string(document.nextRevision() - 1) + "\n");
    QTimer edits;
    QObject::connect(&edits, &QTimer::timeout, [&] {
        fixture::editAtRandom(document, random);
        print("done " + std::to_string(document.nextRevision() - 1) + " " +
              core::sha256(core::toJson(document.record()).dump()) + "\n");
        if (!document.path().isEmpty() && random() % 20 == 0) {
            print("saving\n");
            if (const auto saved = document.save(); !saved) print("failed " + saved.error().message + "\n");
            print("kept\n");
        }
    });
    edits.start(0);
    return QCoreApplication::exec();
}
