// Talks to scipy_tasks.py through two pipes: a task a line, an answer a line.
#include "tests/bench/compare/libraries.h"

#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <iomanip>
#include <memory>
#include <sstream>
#include <stdexcept>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace gauge::bench {
namespace {

class Script {
public:
    Script() {
        int to[2], from[2];
        if (::pipe2(to, O_CLOEXEC) != 0 || ::pipe2(from, O_CLOEXEC) != 0) return;
        m_child = ::fork();
        if (m_child == 0) {
            ::dup2(to[0], 0);
            ::dup2(from[1], 1);
            ::execl("/usr/bin/python3", "python3", GAUGE_BENCH_SCRIPT, static_cast<char*>(nullptr));
            ::_exit(127);
        }
        ::close(to[0]);
        ::close(from[1]);
        m_to = ::fdopen(to[1], "w");
        m_from = ::fdopen(from[0], "r");
    }
    ~Script() {
        if (m_to) std::fclose(m_to);
        if (m_from) std::fclose(m_from);
        if (m_child > 0) ::waitpid(m_child, nullptr, 0);
    }
    Script(const Script&) = delete;
    Script& operator=(const Script&) = delete;

    bool ready() { return m_from && m_child > 0 && line() == "ready\n"; }

    Measured run(const std::string& task) {
        std::fprintf(m_to, "%s\n", task.c_str());
        std::fflush(m_to);
        const std::string answer = line();
        std::istringstream words(answer);
        std::string state;
        Measured measured;
        if (words >> state >> measured.seconds >> measured.processor >> measured.check >> measured.peakBytes && state == "done") return measured;
        throw std::runtime_error("the Python script answered: " + answer);
    }

private:
    std::string line() {
        char text[4096];
        return std::fgets(text, sizeof text, m_from) ? text : "";
    }
    pid_t m_child = -1;
    std::FILE *m_to = nullptr, *m_from = nullptr;
};

Script& script() {
    static Script one;
    return one;
}

std::string volumeWords(Stage& stage) {
    const Eigen::Vector3i& size = stage.volume().size();
    return stage.volumeFile().string() + " " + std::to_string(size.x()) + " " + std::to_string(size.y()) + " " +
           std::to_string(size.z());
}

std::string boxWords(Stage& stage, const std::filesystem::path& file) {
    return file.string() + " " + std::to_string(stage.pool().grid.size.x()) + " " + std::to_string(stage.pool().grid.stepMm);
}

std::string ends(Stage& stage) {
    return " " + std::to_string(stage.chamberNode()) + " " + std::to_string(stage.tubeNode());
}

std::string obliqueWords(Stage& stage) {
    const core::SectionGrid grid = stage.obliqueGrid();
    const auto voxel = [&](double column, double row) -> Eigen::Vector3d {
        return stage.volume().voxelFrom(grid.frame.patientFromSection(grid.sectionFromPixel(column, row))).ijk;
    };
    const Eigen::Vector3d first = voxel(0, 0);
    std::ostringstream words;
    words << std::setprecision(17) << "oblique " << volumeWords(stage) << ' ' << grid.columns << ' ' << grid.rows;
    for (const Eigen::Vector3d& v : {first, Eigen::Vector3d(voxel(1, 0) - first), Eigen::Vector3d(voxel(0, 1) - first)})
        words << ' ' << v.x() << ' ' << v.y() << ' ' << v.z();
    return words.str();
}

std::function<Contestant(Stage&)> task(const std::string& who, const std::function<std::string(Stage&)>& words) {
    return [=](Stage& stage) { return Contestant{who, 1, [line = words(stage)] { return script().run(line); }}; };
}

} // namespace

Library sciPy() {
    const std::map<Task, std::function<Contestant(Stage&)>> tasks{
        {Task::Components, task("SciPy, label", [](Stage& s) { return "components " + volumeWords(s); })},
        {Task::Grow, task("scikit-image, flood",
                          [](Stage& s) {
                              const Eigen::Vector3i at = s.chamberVoxel();
                              return "grow " + volumeWords(s) + " " + std::to_string(at.x()) + " " + std::to_string(at.y()) +
                                     " " + std::to_string(at.z());
                          })},
        {Task::DistanceInside, task("SciPy, distance_transform_edt", [](Stage& s) { return "distance_inside " + boxWords(s, s.poolFile()); })},
        {Task::DistanceSigned, task("SciPy, distance_transform_edt twice", [](Stage& s) { return "distance_signed " + boxWords(s, s.poolFile()); })},
        {Task::SectionContour, task("scikit-image, find_contours",
                                    [](Stage& s) {
                                        return "section_contour " + s.pictureFile().string() + " " +
                                               std::to_string(s.picture().grid.columns) + " " + std::to_string(s.picture().grid.rows);
                                    })},
        {Task::Arrival, task("scikit-image, MCP_Geometric", [](Stage& s) { return "arrival " + boxWords(s, s.depthFile()) + ends(s); })},
        {Task::MinimalPath, task("scikit-image, route_through_array", [](Stage& s) { return "minimal_path " + boxWords(s, s.depthFile()) + ends(s); })},
        {Task::Surface, task("scikit-image, marching_cubes", [](Stage& s) { return "surface " + volumeWords(s); })},
        {Task::Oblique, task("SciPy, map_coordinates", obliqueWords)},
    };
    Library library{"SciPy and scikit-image", script().ready(), {}, {}};
    for (const auto& [what, make] : tasks)
        if (library.installed)
            library.tasks[what] = make;
        else
            library.wouldHave.push_back(what);
    return library;
}

} // namespace gauge::bench
