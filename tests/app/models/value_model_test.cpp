#include "app/models/value_model.h"

#include "app/format/quantity.h"
#include "core/record/edit.h"
#include "core/record/measurement_values.h"
#include "tests/app/support/synthetic_case.h"

#include <QAbstractItemModelTester>
#include <QRegularExpression>
#include <gtest/gtest.h>

using namespace gauge;
using app::ValueModel;

namespace {

core::CaseRecord measuredRecord() {
    core::CaseRecord record;
    core::Mark mark;
    mark.revision = 1;
    core::apply(record, core::SetMark{core::MarkKind::Tip, mark});
    record.values = core::recordedValues(fixture::syntheticMeasurement(), record,
                                         std::make_shared<const core::Provenance>());
    return record;
}

int rowOf(const ValueModel& model, const QString& words) {
    for (int row = 0; row < model.rowCount(); ++row)
        if (model.index(row, 0).data().toString() == words) return row;
    ADD_FAILURE() << words.toStdString();
    return 0;
}

std::string shown(const ValueModel& model, const QString& words, int column) {
    return app::plainSpaces(model.index(rowOf(model, words), column).data().toString()).toStdString();
}

} // namespace

TEST(ValueModel, KeepsTheRulesOfAModel) {
    ValueModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRecord(measuredRecord());
    model.setPreview(&fixture::syntheticMeasurement().landingZones.front());
    model.setPreview(nullptr);
}

// Values of the formula: half axes 12 and 9 mm at the ostium.
TEST(ValueModel, ShowsValuesWithTheirUncertaintyAndUnit) {
    ValueModel model;
    model.setRecord(measuredRecord());
    EXPECT_EQ(shown(model, "longest", ValueModel::OstiumColumn), "24.0 ± 0.4 mm");
    EXPECT_EQ(shown(model, "shortest", ValueModel::OstiumColumn), "18.0 ± 0.4 mm");
    EXPECT_EQ(shown(model, "area", ValueModel::OstiumColumn), "339 ± 7 mm²");
    EXPECT_EQ(shown(model, "eccentricity index", ValueModel::OstiumColumn), "0.25 ± 0.02");
    EXPECT_EQ(shown(model, "volume", ValueModel::OstiumColumn), "6.4 ± 0.3 mL");
    EXPECT_EQ(shown(model, "aorta", ValueModel::OstiumColumn), "–");
    EXPECT_EQ(shown(model, "straight", ValueModel::LandingColumn), "24.3 ± 1.0 mm");
}

TEST(ValueModel, AnEmptyRecordShowsNoNumber) {
    const ValueModel model;
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 1; column < ValueModel::ColumnCount; ++column)
            EXPECT_FALSE(model.index(row, column).data().toString().contains(QRegularExpression("[0-9]")));
}

TEST(ValueModel, MarksValuesWhoseInputHasChanged) {
    core::CaseRecord record = measuredRecord();
    core::Mark moved;
    moved.revision = 2;
    core::apply(record, core::SetMark{core::MarkKind::Tip, moved});
    ValueModel model;
    model.setRecord(record);
    EXPECT_TRUE(
        model.index(rowOf(model, "area"), ValueModel::OstiumColumn).data(ValueModel::IsStaleRole).toBool());
    model.setStaleShown(false);
    EXPECT_EQ(shown(model, "area", ValueModel::OstiumColumn), "–");
}

TEST(ValueModel, APreviewReplacesTheLandingColumnOnly) {
    ValueModel model;
    model.setRecord(measuredRecord());
    const std::string ostium = shown(model, "longest", ValueModel::OstiumColumn);
    core::LandingZone dragged = fixture::syntheticMeasurement().landingZones.front();
    dragged.depthMm = 14.5;
    dragged.section.metrics.longestDiameterMm = {19.87, {0.3, 0.4, 0, 0}, ""};
    model.setPreview(&dragged);
    EXPECT_EQ(shown(model, "longest", ValueModel::LandingColumn), "19.9 ± 0.5 mm");
    EXPECT_EQ(shown(model, "longest", ValueModel::OstiumColumn), ostium);
    EXPECT_EQ(app::plainSpaces(
                  model.headerData(ValueModel::LandingColumn, Qt::Horizontal, Qt::DisplayRole).toString()),
              "Landing zone 14.5 mm");
    model.setPreview(nullptr);
    EXPECT_EQ(app::plainSpaces(
                  model.headerData(ValueModel::LandingColumn, Qt::Horizontal, Qt::DisplayRole).toString()),
              "Landing zone 10.0 mm");
}

TEST(ValueModel, CopiesAsTabSeparatedLinesWithPlainSpaces) {
    ValueModel model;
    model.setRecord(measuredRecord());
    const QString text = model.asText();
    EXPECT_TRUE(text.startsWith("Quantity\tOstium\tLanding zone 10.0 mm\n"));
    EXPECT_TRUE(text.contains("longest\t24.0 ± 0.4 mm\t"));
    EXPECT_EQ(text.count('\n'), model.rowCount() + 1);
}

TEST(ValueModel, TheTooltipTellsThePartsOfTheUncertainty) {
    ValueModel model;
    model.setRecord(measuredRecord());
    const QString tip =
        model.index(rowOf(model, "longest"), ValueModel::OstiumColumn).data(Qt::ToolTipRole).toString();
    EXPECT_TRUE(app::plainSpaces(tip).contains("edge 0.2, plane 0.3 mm")) << tip.toStdString();
}
