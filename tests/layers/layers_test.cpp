#include "tests/layers/include_rules.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <unistd.h>

namespace fs = std::filesystem;
using namespace gauge::test;

namespace {

const fs::path kRoot = GAUGE_SOURCE_DIR;

/// A small tree of its own, removed at the end.
class ScratchTree {
public:
    ScratchTree() {
        const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
        m_root = fs::temp_directory_path() / ("gauge-layers-" + std::string(info->name()) + std::to_string(getpid()));
        fs::remove_all(m_root);
        fs::create_directories(m_root);
    }
    ~ScratchTree() {
        std::error_code ignored;
        fs::remove_all(m_root, ignored);
    }
    void write(const std::string& file, const std::string& text) const {
        fs::create_directories((m_root / file).parent_path());
        std::ofstream(m_root / file) << text;
    }
    const fs::path& root() const { return m_root; }

private:
    fs::path m_root;
};

std::string words(const std::vector<Crossing>& crossings) {
    std::string out;
    for (const auto& c : crossings)
        out += c.file + ":" + std::to_string(c.line) + " includes " + c.included + ": " + c.rule + "\n";
    return out;
}

} // namespace

TEST(Layers, NoIncludeCrossesThem) {
    EXPECT_GT(countSources(kRoot), 40u) << "the walk found hardly any source below " << kRoot;
    const auto crossings = findCrossings(kRoot);
    EXPECT_TRUE(crossings.empty()) << words(crossings);
}

TEST(Layers, FindsEachKindOfCrossing) {
    const ScratchTree tree;
    const struct {
        std::string file, line;
    } crossing[] = {
        {"core/a.h", "#include <QString>"},
        {"core/a2.cpp", "#include <QtCore/qglobal.h>"},
        {"core/b.cpp", "#include <dcmtk/dcmdata/dctk.h>"},
        {"core/c.cpp", "#include \"dicomio/toolkit.h\""},
        {"core/d.cpp", "#  include \"app/cli/exit_code.h\""},
        {"core/geometry/e.h", "#include \"core/volume/volume.h\""},
        {"core/measure/f.cpp", "#include \"core/anatomy/appendage.h\""},
        {"dicomio/g.cpp", "#include <QImage>"},
        {"dicomio/h.h", "#include <dcmtk/dcmdata/dctk.h>"},
        {"dicomio/i.h", "#include <openjpeg-2.5/openjpeg.h>"},
        {"app/j.cpp", "#include <dcmtk/dcmdata/dctk.h>"},
        {"sample-data/k.cpp", "#include \"core/measure/section.h\""},
        {"sample-data/l.h", "#include \"core/anatomy/appendage.h\""},
        {"sample-data/m.cpp", "#include \"dicomio/ct/ct_reader.h\""},
        {"app/n.cpp", "   #include \"tests/support/x.h\""},
        {"core/o.h", "#include <openssl/evp.h>"},
        {"dicomio/p.cpp", "#include <openssl/evp.h>"},
        {"app/q.cpp", "#include <openssl/evp.h>"},
    };
    for (const auto& c : crossing)
        tree.write(c.file, "// first line\n" + c.line + "\n");
    const auto found = findCrossings(tree.root());
    for (const auto& c : crossing)
        EXPECT_TRUE(std::any_of(found.begin(), found.end(),
                                [&](const Crossing& f) { return f.file == c.file && f.line == 2; }))
            << c.file << " with " << c.line << " was not found";
    EXPECT_EQ(found.size(), std::size(crossing)) << words(found);
}

TEST(Layers, LetsAllowedIncludesPass) {
    const ScratchTree tree;
    tree.write("core/volume/a.cpp", "#include \"core/geometry/plane.h\"\n#include <Eigen/Core>\n#include <queue>\n");
    tree.write("core/record/a.cpp", "#include <openssl/evp.h>\n");
    tree.write("dicomio/b.cpp", "#include <dcmtk/dcmdata/dctk.h>\n#include \"core/result.h\"\n");
    tree.write("app/c.h", "#include <QString>\n#include \"dicomio/ct/ct_reader.h\"\n");
    tree.write("sample-data/d.cpp", "#include <dcmtk/dcmdata/dctk.h>\n#include \"core/geometry/plane.h\"\n");
    tree.write("tests/e.cpp", "#include \"tests/support/x.h\"\n#include <dcmtk/dcmdata/dctk.h>\n");
    tree.write("core/comment.h", "// #include <QString> would be wrong here\n");
    tree.write("build/core/generated.h", "#include <QString>\n");
    const auto found = findCrossings(tree.root());
    EXPECT_TRUE(found.empty()) << words(found);
}

TEST(Repository, TopLevelHoldsOnlyWhatBelongsThere) {
    const std::set<std::string> allowed{
        "CMakeLists.txt", "CMakePresets.json", "README.md",   "DEVELOPERS.md", "LICENSE", "app", "core", "dicomio",
        "tests",          "resources",         "sample-data", "build"}; // build: made by building, not kept
    for (const auto& entry : fs::directory_iterator(kRoot)) {
        const std::string name = entry.path().filename().string();
        EXPECT_TRUE(name.starts_with('.') || allowed.contains(name)) << name << " does not belong at the top level";
    }
    for (const auto* needed : {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE",
                               ".ci/run", ".clang-format", ".clang-tidy", ".gitignore"})
        EXPECT_TRUE(fs::exists(kRoot / needed)) << needed << " is missing";
}

TEST(Repository, EveryScriptParses) {
    std::vector<fs::path> scripts{kRoot / ".ci/run"};
    for (const auto* room : {"app", "core", "dicomio", "tests", "resources", "sample-data"}) {
        if (!fs::exists(kRoot / room)) continue;
        for (const auto& entry : fs::recursive_directory_iterator(kRoot / room))
            if (entry.path().extension() == ".sh") scripts.push_back(entry.path());
    }
    EXPECT_GE(scripts.size(), 3u) << "app/run.sh, tests/run.sh and .ci/run at least";
    for (const auto& script : scripts)
        EXPECT_EQ(std::system(("bash -n '" + script.string() + "'").c_str()), 0) << script;
}
