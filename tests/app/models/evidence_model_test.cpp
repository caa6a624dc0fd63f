#include "app/models/evidence_model.h"

#include "tests/app/support/synthetic_session.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

using namespace gauge;
using app::EvidenceModel;

namespace {

std::shared_ptr<const dicomio::SeriesIndex> twoSeries() {
    auto index = std::make_shared<dicomio::SeriesIndex>(*fixture::syntheticImages().index);
    dicomio::SeriesEntry refused;
    refused.kind = "ct";
    refused.description = "Broken";
    refused.status = dicomio::SeriesStatus::Refused;
    refused.phases.resize(1);
    refused.messages.push_back({"slice-missing", "A slice is missing between 12 and 13.", {}});
    index->series.push_back(refused);
    return index;
}

/// The model as an indented list, for comparison as text.
QString printed(const EvidenceModel& model, const QModelIndex& parent = {}, int depth = 0) {
    QString text;
    for (int row = 0; row < model.rowCount(parent); ++row) {
        const QModelIndex index = model.index(row, 0, parent);
        text += QString(2 * depth, ' ') + index.data().toString();
        if (const QString detail = index.data(EvidenceModel::DetailRole).toString(); !detail.isEmpty())
            text += " | " + detail;
        text += (index.data(EvidenceModel::IsShownRole).toBool() ? " *\n" : "\n") +
                printed(model, index, depth + 1);
    }
    return text;
}

} // namespace

TEST(EvidenceModel, KeepsTheRulesOfAModel) {
    EvidenceModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setIndex(twoSeries());
    model.setShown(0, 1);
    model.setIndex(nullptr);
}

TEST(EvidenceModel, ListsSeriesAndPhasesAndWhyOneIsRefused) {
    EvidenceModel model;
    model.setIndex(twoSeries());
    model.setShown(0, 1);
    EXPECT_EQ(printed(model).replace(QChar(0x00A0), ' ').toStdString(),
              "CT: Left atrium, gated | 360 images, 0.90 × 0.90 × 0.90 mm\n"
              "  phase 30 %\n"
              "  phase 45 % *\n"
              "  phase 75 %\n"
              "CT: Broken | A slice is missing between 12 and 13.\n");
}

TEST(EvidenceModel, OnlyPhasesCanBeChosen) {
    EvidenceModel model;
    model.setIndex(twoSeries());
    EXPECT_FALSE(model.phaseAt(model.index(0, 0)));
    EXPECT_EQ(model.phaseAt(model.index(2, 0, model.index(0, 0))),
              (std::pair<std::size_t, std::size_t>(0, 2)));
    EXPECT_FALSE(model.flags(model.index(1, 0)) & Qt::ItemIsSelectable);
}
