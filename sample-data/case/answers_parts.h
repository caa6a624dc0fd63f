// Pieces from which the answers are put together.
#pragma once

#include "sample-data/case/procedure.h"
#include "sample-data/scene/truth.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace gauge::sample_case {

/// Answers are printed to a micrometre: far below what they are compared with.
double rounded(double value);
nlohmann::json vectorJson(const Eigen::Vector3d& v);
nlohmann::json pixelJson(const Eigen::Vector2d& pixel);
nlohmann::json sectionJson(const TrueSection& section);

/// Adds "pressure", "echo", "doppler", "echo_volumes" and "fluoroscopy".
void addProcedureAnswers(const Procedure& procedure, const std::vector<double>& landingDepthsMm,
                         nlohmann::json& answers);

/// An ellipse about the beam axis through widths at probe angles: 1/r^2 = alpha + beta cos 2t + gamma sin 2t in least
/// squares, r half a width.
struct WidthEllipse {
    double longestMm = 0.0, shortestMm = 0.0, perimeterDerivedMm = 0.0;
};
/// @return nullopt with fewer than three widths or when they belong to no ellipse.
std::optional<WidthEllipse> ellipseThrough(const std::vector<std::pair<double, double>>& widthMmByAngleDeg);

/// True widths of the landing zone in each view of a set, at the frame nearest to `percent`.
std::vector<std::pair<double, double>> landingWidths(const Procedure& procedure, const EchoSet& set, double percent);

} // namespace gauge::sample_case
