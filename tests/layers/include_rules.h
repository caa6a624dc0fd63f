// Which room may include what, and a walk over the tree that finds includes which cross a layer.
// The rooms and their arrows: DEVELOPERS.md, "Rooms".
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace gauge::test {

/// An include that its room may not have.
struct Crossing {
    std::string file; ///< relative to the root, with '/'
    int line = 0;
    std::string included;
    std::string rule; ///< in words
};

/// Every crossing in the C++ files (.h, .cpp, .inl) below `root`; folders named build or starting with a dot are
/// left out.
std::vector<Crossing> findCrossings(const std::filesystem::path& root);

/// How many C++ files `findCrossings` looks at: so that a walk over nothing cannot pass.
std::size_t countSources(const std::filesystem::path& root);

} // namespace gauge::test
