// Writes edits into a library until it is stopped, and says "saved N" on standard output after each that was reported saved.
//   library_writer sqlite FILE | postgres FOLDER DATABASE      further options: limit BYTES (largest file), nobody (user)
#include "app/library/case_library.h"

#include <QCoreApplication>
#include <csignal>
#include <cstdio>
#include <sys/resource.h>
#include <unistd.h>

using namespace gauge::app;

namespace {

int fail(const std::string& message) {
    std::printf("failed %s\n", message.c_str());
    std::fflush(stdout);
    return 3;
}

QByteArray content(qint64 sequence) { // half an edit would not agree with its own end
    QByteArray text = QByteArray::number(sequence) + ' ';
    return text + QByteArray(static_cast<qsizetype>(200 + sequence * 37 % 3000), 'x') + ' ' + QByteArray::number(sequence);
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList words = application.arguments();
    LibraryPlace place;
    if (words.value(1) == "postgres") {
        place.kind = LibraryPlace::Kind::Postgres;
        place.host = words.value(2);
        place.database = words.value(3);
        place.user = "library";
    } else {
        place.path = words.value(2);
    }
    if (const auto at = words.indexOf("limit"); at > 0) {
        std::signal(SIGXFSZ, SIG_IGN); // as a full disk: the write fails, the program goes on
        const rlimit limit{words.value(at + 1).toULong(), words.value(at + 1).toULong()};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    if (words.contains("nobody") && (setgid(65534) != 0 || setuid(65534) != 0)) return fail("cannot become nobody");

    auto library = CaseLibrary::open(place, "writer", "here");
    if (!library) return fail(library.error().message);
    const auto cases = (*library)->list();
    if (!cases) return fail(cases.error().message);
    gauge::core::Result<Editing> editing = Editing{};
    if (cases->empty()) {
        editing = (*library)->create({"t", "n", "i", {}, {}, {}, {}}, "begin", 0);
        if (!editing) return fail(editing.error().message);
    } else {
        const auto answer = (*library)->beginEditing(cases->front().id);
        if (!answer) return fail(answer.error().message);
        if (!answer->editing) return fail("held by " + answer->lease.holder.toStdString());
        editing = *answer->editing;
    }
    for (;;) {
        const qint64 next = editing->lastSequence + 1;
        const auto put = (*library)->append(*editing, {{next, content(next)}});
        if (!put) return fail(put.error().message);
        std::printf("saved %lld\n", static_cast<long long>(next));
        std::fflush(stdout);
        if (next % 23 == 0)
            if (const auto saved = (*library)->save(*editing, {"t", "n", "i", {}, {}, {}, {}}, "up to " + QByteArray::number(next), next);
                !saved)
                return fail(saved.error().message);
    }
}
