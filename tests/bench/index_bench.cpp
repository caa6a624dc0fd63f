// Listing a folder of 20,000 CT files of half a megabyte each: against opening each file and reading 4 KiB of
// it. The files are sparse (their pixels are holes), so that they fit on any disc; only headers are read
// anyway, which the number of bytes read proves.
#include "dicomio/index/series_index.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <stdexcept>
#include <string>
#include <thread>
#include <unistd.h>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace gauge;

constexpr int kFiles = 20000, kSlicesOfASeries = 400;
constexpr std::uint32_t kPixelBytes = 512 * 512 * 2;

void put(std::string& out, std::uint16_t group, std::uint16_t element, const char* vr, std::string value) {
    if (value.size() % 2) value += std::strcmp(vr, "UI") ? ' ' : '\0';
    const auto word = [&](std::uint32_t v) {
        out += static_cast<char>(v & 0xFF), out += static_cast<char>(v >> 8 & 0xFF);
    };
    word(group), word(element), out += vr, word(static_cast<std::uint32_t>(value.size())), out += value;
}

std::string number(std::uint16_t v) {
    return {static_cast<char>(v & 0xFF), static_cast<char>(v >> 8)};
}

std::string header(int file) {
    const int series = file / kSlicesOfASeries, slice = file % kSlicesOfASeries;
    const std::string uid = "1.2.826.0.1.3680043.8.498.5." + std::to_string(series + 1);
    std::string d;
    put(d, 0x0008, 0x0008, "CS", "ORIGINAL\\PRIMARY\\AXIAL");
    put(d, 0x0008, 0x0016, "UI", "1.2.840.10008.5.1.4.1.1.2");
    put(d, 0x0008, 0x0018, "UI", uid + "." + std::to_string(slice + 1));
    put(d, 0x0008, 0x0022, "DA", "20260305");
    put(d, 0x0008, 0x0032, "TM", "101500");
    put(d, 0x0008, 0x0060, "CS", "CT");
    for (std::uint16_t extra = 0; extra < 60;
         ++extra) // as many attributes as scanners write, none of use here
        put(d, 0x0009, static_cast<std::uint16_t>(0x1000 + extra), "LO", "an attribute that nobody needs");
    put(d, 0x0010, 0x0010, "PN", "Invented^Patient");
    put(d, 0x0010, 0x0020, "LO", "P1");
    put(d, 0x0020, 0x000D, "UI", "1.2.826.0.1.3680043.8.498.5");
    put(d, 0x0020, 0x000E, "UI", uid);
    put(d, 0x0020, 0x0032, "DS", "-100\\-100\\" + std::to_string(slice * 0.5));
    put(d, 0x0020, 0x0037, "DS", "1\\0\\0\\0\\1\\0");
    put(d, 0x0020, 0x0052, "UI", "1.2.826.0.1.3680043.8.498.5.0");
    put(d, 0x0028, 0x0002, "US", number(1));
    put(d, 0x0028, 0x0004, "CS", "MONOCHROME2");
    put(d, 0x0028, 0x0010, "US", number(512));
    put(d, 0x0028, 0x0011, "US", number(512));
    put(d, 0x0028, 0x0030, "DS", "0.4\\0.4");
    put(d, 0x0028, 0x0100, "US", number(16));
    put(d, 0x0028, 0x0101, "US", number(16));
    put(d, 0x0028, 0x0102, "US", number(15));
    put(d, 0x0028, 0x0103, "US", number(1));
    put(d, 0x0028, 0x1052, "DS", "0");
    put(d, 0x0028, 0x1053, "DS", "1");
    std::string meta, length;
    put(meta, 0x0002, 0x0010, "UI", "1.2.840.10008.1.2.1");
    put(length, 0x0002, 0x0000, "UL", std::string{static_cast<char>(meta.size()), 0, 0, 0});
    const std::string pixels =
        std::string("\xE0\x7F\x10\x00OW\0\0", 8) + number(kPixelBytes & 0xFFFF) + number(kPixelBytes >> 16);
    return std::string(128, '\0') + "DICM" + length + meta + d + pixels;
}

struct Folder {
    fs::path path = fs::temp_directory_path() / ("gauge-bench-index-" + std::to_string(getpid()));
    std::vector<fs::path> files;

    Folder() {
        for (int file = 0; file < kFiles; ++file) {
            const fs::path folder = path / std::to_string(file / kSlicesOfASeries);
            if (file % kSlicesOfASeries == 0) fs::create_directories(folder);
            files.push_back(folder / std::to_string(file % kSlicesOfASeries));
            const std::string head = header(file);
            std::ofstream(files.back(), std::ios::binary) << head;
            fs::resize_file(files.back(), head.size() + kPixelBytes);
        }
    }
    ~Folder() {
        std::error_code ignored;
        fs::remove_all(path, ignored);
    }
};

const Folder& folder() {
    static const Folder instance;
    return instance;
}

double secondsOf(const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Opens each file and reads its first 4 KiB, one after the other: what listing cannot do without.
void readHeads() {
    std::vector<char> block(4096);
    for (const fs::path& file : folder().files) {
        const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
        if (descriptor < 0 || ::read(descriptor, block.data(), block.size()) <= 0)
            throw std::runtime_error("unreadable");
        ::close(descriptor);
    }
    benchmark::DoNotOptimize(block.data());
}

/// Bytes that this process has asked the system for.
double bytesRead() {
    std::ifstream in("/proc/self/io");
    std::string key;
    double value = 0.0;
    in >> key >> value; // rchar
    return value;
}

void list20000Files(benchmark::State& state) {
    folder();
    std::vector<double> listing, heads;
    double bytes = 0.0;
    for (auto _ : state) {
        heads.push_back(secondsOf(readHeads));
        const double before = bytesRead();
        listing.push_back(secondsOf([] {
            const auto index = dicomio::indexFolder(folder().path);
            if (!index || index->series.size() != kFiles / kSlicesOfASeries ||
                !index->series.front().measurable)
                throw std::runtime_error("the folder was not listed as it should be");
        }));
        bytes = bytesRead() - before;
        state.SetIterationTime(listing.back());
    }
    std::nth_element(heads.begin(), heads.begin() + heads.size() / 2, heads.end());
    std::nth_element(listing.begin(), listing.begin() + listing.size() / 2, listing.end());
    const double list = listing[listing.size() / 2], head = heads[heads.size() / 2];
    state.counters["files_per_s"] = kFiles / list;
    state.counters["KiB_read_a_file"] = bytes / kFiles / 1024.0;
    state.counters["opening_and_4_KiB_s"] = head;
    bench::reportLine("list 20,000 files, seconds", list, "s", 5.0);
    bench::reportLine("list 20,000 files, times opening each and reading 4 KiB", list / head, "x", 10.0);
}
BENCHMARK(list20000Files)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(3);

/// From the wish to stop until the answer.
void cancelListing(benchmark::State& state) {
    folder();
    double longest = 0.0;
    for (auto _ : state) {
        std::stop_source stop;
        std::chrono::steady_clock::time_point asked;
        core::WorkContext work{stop.get_token(), [&](double share) {
                                   if (share < 0.5 || stop.stop_requested()) return;
                                   asked = std::chrono::steady_clock::now();
                                   stop.request_stop();
                               }};
        if (dicomio::indexFolder(folder().path, {}, work)) throw std::runtime_error("it was not cancelled");
        longest = std::max(longest,
                           std::chrono::duration<double>(std::chrono::steady_clock::now() - asked).count());
    }
    bench::reportLine("answer to a cancelled listing", 1000.0 * longest, "ms", 100.0);
}
BENCHMARK(cancelListing)->Unit(benchmark::kMillisecond)->Iterations(3);

} // namespace
