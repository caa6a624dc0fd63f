#include "tests/bench/compare/comparison.h"

#include "core/fast/spare_memory.h"
#include "core/parallel/parallel_for.h"
#include "tests/bench/compare/text.h"
#include "tests/bench/memory.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <malloc.h>

namespace gauge::bench {
namespace {

using Clock = std::chrono::steady_clock;

std::string milliseconds(double seconds) {
    const double ms = 1e3 * seconds;
    return text("%.*f", ms < 10.0 ? 2 : ms < 100.0 ? 1 : 0, ms);
}

double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

bool agree(double a, double b, double tolerance) {
    return std::abs(a - b) <= tolerance * std::max(std::abs(a), std::abs(b)) + 1e-12;
}

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

/// Of this process so far.
double processorSeconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

} // namespace

std::function<Measured()> timed(std::function<Check()> work) {
    return [work = std::move(work)] {
        malloc_trim(0); // memory that a former run gave back is fetched anew, and counted
        forgetPeak();
        const auto before = static_cast<double>(processMemory("VmRSS"));
        Measured measured;
        const double processor = processorSeconds();
        const auto start = Clock::now();
        const Check check = work();
        measured.seconds = secondsSince(start);
        measured.processor = processorSeconds() - processor;
        measured.peakBytes = std::max(0.0, static_cast<double>(processMemory("VmHWM")) - before);
        measured.check = check();
        return measured;
    };
}

std::function<Check()> onOneCore(std::function<Check()> work) {
    return [work = std::move(work)] {
        Check check;
        core::parallelFor(2, 1, [&](std::size_t begin, std::size_t) {
            if (begin == 0) check = work();
        });
        return check;
    };
}

struct Comparison::Samples {
    const Contestant* contestant;
    std::vector<double> seconds, processor;
    double check = 0.0, peak = 0.0;

    void take(bool first) {
        if (first) core::releaseSpareLarge(); // so that its peak counts what later runs find at hand
        const Measured measured = contestant->run();
        if (!first) {
            seconds.push_back(measured.seconds);
            processor.push_back(measured.processor);
        }
        check = measured.check;
        peak = std::max(peak, measured.peakBytes);
    }
    double median() const { return medianOf(seconds); }
};

bool Comparison::wants(const std::string& name) const {
    const auto& wanted = m_options.wanted;
    return wanted.empty() || std::any_of(wanted.begin(), wanted.end(), [&](const std::string& part) {
               return name.find(part) != std::string::npos;
           });
}

void Comparison::row(const std::string& name, const std::function<Operation()>& make) {
    if (!wants(name)) return;
    if (m_options.list) {
        std::printf("%s\n", name.c_str());
        return;
    }
    std::fprintf(stderr, "%s\n", name.c_str());
    try {
        runAll(name, make());
    } catch (const std::exception& e) {
        m_remarks.push_back("FAILED: " + name + ": " + e.what());
        std::fprintf(stderr, "    FAILED: %s\n", e.what());
        m_failed = true;
    }
}

void Comparison::runAll(const std::string& name, const Operation& operation) {
    std::vector<Samples> all{{&operation.ours, {}, {}}};
    for (const Contestant& other : operation.others)
        all.push_back({&other, {}, {}});
    for (Samples& one : all)
        one.take(true);
    const auto start = Clock::now();
    for (int round = 0; round < m_options.samples; ++round) {
        if (round >= std::min(3, m_options.samples) && secondsSince(start) > m_options.budgetSeconds) break;
        for (Samples& one : all)
            one.take(false);
    }

    const double ours = all.front().median();
    double best = 0.0;
    for (std::size_t i = 1; i < all.size(); ++i)
        if (all[i].contestant->counts && (best == 0.0 || all[i].median() < best)) best = all[i].median();

    for (const Samples& one : all) {
        const bool isOurs = &one == &all.front();
        Line line{isOurs ? name : "",
                  one.contestant->who,
                  std::to_string(one.contestant->threads),
                  milliseconds(one.median()),
                  isOurs ? (best > 0.0 ? text("**%.2f**", best / ours) : "") : text("%.2f", one.median() / ours),
                  milliseconds(medianOf(one.processor)),
                  "",
                  text("%.0f", one.peak / 1e6),
                  text("%.8g %s", one.check, operation.checks.c_str())};
        if (isOurs) {
            const Goal& goal = operation.goal;
            const auto add = [&](bool met, const std::string& words) {
                line.goal += (line.goal.empty() ? "" : "; ") + words + (met ? "" : " MISSED");
                if (!met) m_remarks.push_back("goal missed: " + name + ": " + words + "; ours " + milliseconds(ours) + " ms" +
                                              (best > 0.0 ? text(", ratio %.2f", best / ours) : std::string()) +
                                              text(", peak %.0f MB", one.peak / 1e6));
            };
            if (goal.ratio > 0.0 && best > 0.0) add(best / ours >= goal.ratio, text("%.3g x", goal.ratio));
            if (goal.ms > 0.0) add(1e3 * ours <= goal.ms, text("%.3g ms", goal.ms));
            if (goal.peakMb > 0.0) add(one.peak <= 1e6 * goal.peakMb, text("%.3g MB", goal.peakMb));
        } else if (!agree(one.check, all.front().check, operation.tolerance)) {
            line.check += " DIFFERS";
            m_failed = true;
            m_remarks.push_back("CHECK VALUES DIFFER: " + name + ": ours " + text("%.10g", all.front().check) + ", " +
                                one.contestant->who + text(" %.10g %s", one.check, operation.checks.c_str()) +
                                text(", allowed %.2g of it", operation.tolerance));
            std::fprintf(stderr, "    %s\n", m_remarks.back().c_str());
        }
        std::fprintf(stderr, "    %-44s %10s ms  ratio %-9s processor %10s ms\n", line.who.c_str(), line.median.c_str(), line.ratio.c_str(),
                     line.processor.c_str());
        m_lines.push_back(line);
    }
    for (const std::string& library : operation.missing)
        m_lines.push_back({"", library, "", "not installed", "", "", "", "", ""});
}

void Comparison::print() const {
    if (m_options.list) return;
    std::printf("| operation | who | threads | median, ms | ratio | processor, ms | goal | peak, MB | check value |\n"
                "| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
    for (const Line& l : m_lines)
        std::printf("| %s | %s | %s | %s | %s | %s | %s | %s | %s |\n", l.name.c_str(), l.who.c_str(), l.threads.c_str(),
                    l.median.c_str(), l.ratio.c_str(), l.processor.c_str(), l.goal.c_str(), l.peak.c_str(), l.check.c_str());
    std::printf("\n");
    for (const std::string& remark : m_remarks)
        std::printf("%s\n", remark.c_str());
    double load = -1.0;
    if (getloadavg(&load, 1) == 1) std::printf("Load of the machine at the end (1 minute): %.1f\n", load);
}

} // namespace gauge::bench
