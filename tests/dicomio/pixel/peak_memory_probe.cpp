// Reads all that a file offers - headers, samples and colours of its first and last frame, brightness - as an
// own process, so that its peak memory can be asked of the system. Ends with 0 however the file answers.
// Prints the bytes that its pixels honestly need: one decoded frame.
#include "dicomio/pixel/colour.h"
#include "dicomio/pixel/greyscale.h"

#include <cstdio>

using namespace gauge::dicomio;

int main(int count, char** arguments) {
    if (count != 2) return 2;
    const auto scanned = scanFile(arguments[1]);
    if (!scanned || !scanned->format) return std::puts("0") < 0;
    std::printf("%llu\n", static_cast<unsigned long long>(scanned->format->frameBytes()));
    const auto reader = FrameReader::open(*scanned);
    const auto colour = ColourReader::open(*scanned);
    for (const int frame : {0, scanned->format->frames - 1}) {
        if (reader) (void)reader->readValues(frame);
        if (colour) (void)colour->readRgb(frame);
        (void)greyscaleOf(*scanned, frame);
    }
    return 0;
}
