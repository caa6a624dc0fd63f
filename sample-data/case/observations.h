// What a team would have written down, error-free, in two stories about the invented patient; format
// "ostium-gauge/observations/1". Values are true ones, from the defining functions.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace gauge::sample_case {

struct SampleCase;

/// What the files' "invented_for" says: how a file of ours is told from a person's own.
inline constexpr const char* kInventedFor = "the sample case; no patient";

struct Observations {
    std::string name; ///< "passing" or "lasting"
    nlohmann::json content;
};

/// "passing": the CT at an estimated pressure and the echo under anaesthesia before the repair, at a measured low one.
/// "lasting": the CT at a pressure nobody knows, under severe regurgitation, and the echo after the repair.
/// Precondition: the sample has a procedure with a CT state and these two echo sets (first and last).
std::vector<Observations> observations(const SampleCase& sample);

} // namespace gauge::sample_case
