#include "core/agreement/intraclass.h"

#include "core/agreement/quantiles.h"

#include <cmath>
#include <string>

namespace gauge::core {

namespace {

using agreement::fisherQuantile;

Result<void> check(const Eigen::MatrixXd& r, double confidence) {
    if (r.rows() < 2 || r.cols() < 2)
        return failure(ErrorCode::TooFewPoints, "Cannot give intraclass correlations of " + std::to_string(r.rows()) +
                                                    " targets read by " + std::to_string(r.cols()) +
                                                    " judges; at least 2 of each are needed.");
    if (!r.allFinite())
        return failure(ErrorCode::NonFinite,
                       "Cannot give intraclass correlations: a reading is missing or no finite number.");
    if (!(confidence > 0.0 && confidence < 1.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot give intraclass correlations: a confidence must lie between 0 and 1.");
    return {};
}

void fillMeanSquares(IntraclassCorrelations& out, const Eigen::MatrixXd& r) {
    const double n = static_cast<double>(r.rows()), k = static_cast<double>(r.cols());
    const double grand = r.mean();
    const Eigen::VectorXd rows = r.rowwise().mean();
    const Eigen::RowVectorXd columns = r.colwise().mean();
    const Eigen::MatrixXd within = r.colwise() - rows;
    const Eigen::MatrixXd rest = (within.rowwise() - columns).array() + grand;
    out.betweenTargets = k * (rows.array() - grand).square().sum() / (n - 1.0);
    out.withinTargets = within.squaredNorm() / (n * (k - 1.0));
    out.betweenJudges = n * (columns.array() - grand).square().sum() / (k - 1.0);
    out.residual = rest.squaredNorm() / ((n - 1.0) * (k - 1.0));
}

/// Correlations of forms 1 and 3, which follow from one ratio F of mean squares.
void fillFromRatio(Correlation& single, Correlation& mean, double ratio, double k, double degrees1, double degrees2,
                   double tail) {
    const double low = ratio / fisherQuantile(tail, degrees1, degrees2);
    const double high = ratio * fisherQuantile(tail, degrees2, degrees1);
    const auto one = [k](double f) { return (f - 1.0) / (f + k - 1.0); };
    const auto all = [](double f) { return 1.0 - 1.0 / f; };
    single = {one(ratio), {one(low), one(high)}};
    mean = {all(ratio), {all(low), all(high)}};
}

double spearmanBrown(double single, double k) { return k * single / (1.0 + (k - 1.0) * single); }

void fillForm2(IntraclassCorrelations& out, double tail) {
    const double n = out.targets, k = out.judges;
    const double b = out.betweenTargets, j = out.betweenJudges, e = out.residual;
    const double rho = (b - e) / (b + (k - 1.0) * e + k * (j - e) / n);
    const double f = j / e, a = n * (1.0 + (k - 1.0) * rho) - k * rho;
    const double sum = k * rho * f + a;
    const double degrees = (k - 1.0) * (n - 1.0) * sum * sum / ((n - 1.0) * k * k * rho * rho * f * f + a * a);
    const double low = fisherQuantile(tail, n - 1.0, degrees), high = fisherQuantile(tail, degrees, n - 1.0);
    const double rest = k * j + (k * n - k - n) * e;
    out.single2 = {rho, {n * (b - low * e) / (low * rest + n * b), n * (high * b - e) / (rest + n * high * b)}};
    out.mean2 = {(b - e) / (b + (j - e) / n),
                 {spearmanBrown(out.single2.interval.lower, k), spearmanBrown(out.single2.interval.upper, k)}};
}

} // namespace

Result<IntraclassCorrelations> intraclassCorrelations(const Eigen::MatrixXd& readings, double confidence) {
    if (auto checked = check(readings, confidence); !checked) return tl::make_unexpected(checked.error());
    IntraclassCorrelations out;
    out.targets = static_cast<int>(readings.rows());
    out.judges = static_cast<int>(readings.cols());
    fillMeanSquares(out, readings);
    // What rounding leaves of a sum of squares that is 0.
    const double nothing = 1e-24 * (1.0 + readings.squaredNorm());
    if (out.betweenTargets <= nothing)
        return failure(ErrorCode::Degenerate,
                       "Cannot give intraclass correlations: all targets read alike, so nothing tells them apart.");
    if (out.residual <= nothing)
        return failure(ErrorCode::Degenerate,
                       "Cannot give intraclass correlations: the judges differ by constants only, so there is no error to "
                       "compare with.");
    const double n = out.targets, k = out.judges, tail = 0.5 + 0.5 * confidence;
    fillFromRatio(out.single1, out.mean1, out.betweenTargets / out.withinTargets, k, n - 1.0, n * (k - 1.0), tail);
    fillFromRatio(out.single3, out.mean3, out.betweenTargets / out.residual, k, n - 1.0, (n - 1.0) * (k - 1.0), tail);
    fillForm2(out, tail);
    return out;
}

} // namespace gauge::core
