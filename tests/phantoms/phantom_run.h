// Measures invented hearts and compares with their exact answers.
#pragma once

#include "core/anatomy/appendage.h"
#include "sample-data/phantom.h"

#include <map>
#include <string>
#include <vector>

namespace gauge::tests {

/// Absolute errors collected under a name.
class Errors {
public:
    void add(double error) { m_values.push_back(std::abs(error)); }
    std::size_t count() const { return m_values.size(); }
    double median() const { return quantile(0.5); }
    double p95() const { return quantile(0.95); }
    double quantile(double share) const;

private:
    mutable std::vector<double> m_values;
};

/// One proposal of an ostium.
struct Proposal {
    double confidence = 0.0;
    double offMm = 0.0;
    double offDeg = 0.0;
    bool good() const { return offMm <= 2.0 && offDeg <= 10.0; }
};

struct ShapeResult {
    sample_case::Shape shape{};
    int measured = 0, tried = 0;
    int axisPointsOutside = 0;
    std::map<std::string, Errors> errors;
    std::vector<Proposal> proposals;
    std::vector<std::string> failures; ///< with the phantom's description

    const Errors& of(const std::string& name) const;
};

core::AppendageMarks marksOf(const sample_case::Phantom& phantom, bool landmarks);

/// Measures `seeds` phantoms of a shape with landmarks and again without (a proposal).
ShapeResult runShape(sample_case::Shape shape, int seeds);

/// A line a quantity, for DEVELOPERS.md.
void print(const ShapeResult& result);

} // namespace gauge::tests
