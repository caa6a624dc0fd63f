// The same operation done by us and by general libraries, in one process and by turns, so that whatever else the machine does
// hits both alike; one table of all of them. How to run and read it: DEVELOPERS.md, "Benchmarks".
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace gauge::bench {

/// What a run found, as one number on which all must agree. Holds the result until then: making the number and freeing the
/// result are timed for nobody.
using Check = std::function<double()>;

struct Measured {
    double seconds = 0.0;
    double processor = 0.0; ///< seconds of processor time, all threads together: what a busy machine stretches least
    double check = 0.0;
    double peakBytes = 0.0; ///< resident memory at its highest while running, above what it was before
};

struct Contestant {
    std::string who;
    int threads = 1;
    std::function<Measured()> run;
    bool counts = true; ///< false: shown, but no rival for the ratio (a plain read of the bytes, a script's slow twin)
};

/// Wraps `work` with clock and memory gauge.
std::function<Measured()> timed(std::function<Check()> work);
/// Runs `work` so that a parallelFor within it has the calling thread alone.
std::function<Check()> onOneCore(std::function<Check()> work);

/// Zeros are no goals.
struct Goal {
    double ratio = 0.0;  ///< best library's median / ours, at least
    double ms = 0.0;     ///< our median, at most
    double peakMb = 0.0; ///< our peak memory, at most
};

struct Operation {
    Goal goal;
    std::string checks;           ///< what the check value is: "voxels", "mean HU"
    double tolerance = 0.0;       ///< greatest relative difference between our check value and another's
    Contestant ours;
    std::vector<Contestant> others;
    std::vector<std::string> missing; ///< libraries that would be here if they were installed
};

struct CompareOptions {
    std::vector<std::string> wanted; ///< rows whose name contains one of these; none: all
    int samples = 7;                 ///< of each contestant
    double budgetSeconds = 20.0;     ///< of one operation; at least three samples are taken whatever it costs
    bool list = false;               ///< names only
};

class Comparison {
public:
    explicit Comparison(CompareOptions options) : m_options(std::move(options)) {}

    /// Makes and runs the operation unless the options leave it out. An exception within it is printed in its place and
    /// makes failed() true.
    void row(const std::string& name, const std::function<Operation()>& make);

    /// The table in Markdown, then what misses its goal. To stdout.
    void print() const;
    /// True when check values differ or an operation could not be run.
    bool failed() const { return m_failed; }

private:
    struct Line {
        std::string name, who, threads, median, ratio, processor, goal, peak, check;
        bool missed = false;
    };
    struct Samples;
    void runAll(const std::string& name, const Operation& operation);
    bool wants(const std::string& name) const;

    CompareOptions m_options;
    std::vector<Line> m_lines;
    std::vector<std::string> m_remarks;
    bool m_failed = false;
};

} // namespace gauge::bench
