#include "app/models/evidence_model.h"

#include "app/commands/evidence_commands.h"
#include "app/document/load_images.h"
#include "app/document/propose_evidence.h"
#include "tests/app/support/synthetic_pictures.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

using namespace gauge;
using app::EvidenceModel;

namespace {

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
    return text.replace(QChar(0x00A0), ' ');
}

struct Proposed {
    app::CaseDocument document;
    std::shared_ptr<const dicomio::SeriesIndex> index = fixture::indexWithPictures();
    std::string patient = dicomio::patientKey(index->series.front());

    Proposed() { app::proposeEvidence(document, *index, patient); }
    void show(EvidenceModel& model) const { model.setCase(index, document.record(), patient); }
};

} // namespace

TEST(EvidenceModel, KeepsTheRulesOfAModel) {
    EvidenceModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    Proposed proposed;
    proposed.show(model);
    model.setShownEvidence("2.25.201");
    model.setOffer(proposed.index);
    model.setNamesHidden(true);
    model.setCase(nullptr, {}, {});
}

TEST(EvidenceModel, ListsStagesInOrderOfTimeAndWhyASeriesIsRefused) {
    EvidenceModel model;
    Proposed proposed;
    core::ImagesUsed images = app::imagesUsed(*proposed.index, 0, 1);
    proposed.document.apply(core::SetImages{images});
    proposed.show(model);
    model.setShownEvidence("2.25.201");
    EXPECT_EQ(printed(model).toStdString(),
              "Before the procedure\n"
              "  CT: Left atrium, gated | pressure unknown · not measured\n"
              "    phase 30 %\n"
              "    phase 45 % *\n"
              "    phase 75 %\n"
              "Before the repair\n"
              "  Echo view 0° | pressure unknown · not measured\n"
              "  Echo view 45° | pressure unknown · not measured *\n"
              "  Echo view 90° | pressure unknown · not measured\n"
              "  Echo view, angle unknown | pressure unknown · not measured\n"
              "  Fluoroscopy: RAO 30 CRA 20 | pressure unknown · not measured\n"
              "Not used\n"
              "  CT: Broken | A slice is missing between 12 and 13.\n");
}

TEST(EvidenceModel, TellsPressureAndMeasurements) {
    EvidenceModel model;
    Proposed proposed;
    core::Moment moment;
    moment.circulation.state = "lab";
    moment.circulation.stage = core::Stage::AfterRepair;
    moment.circulation.meanPressureMmHg = 8.0;
    moment.circulation.vWaveMmHg = 12.0;
    proposed.document.apply(core::SetEntry<core::Moment>{"lab", core::Entry<core::Moment>{moment, proposed.document.nextRevision(), {}}});
    proposed.document.push(std::make_unique<app::ChangeMoment>(proposed.document, "2.25.201", "lab"));
    core::Drawing drawing;
    drawing.evidence = "2.25.201";
    proposed.document.apply(core::SetEntry<core::Drawing>{"1", core::Entry<core::Drawing>{drawing, proposed.document.nextRevision(), {}}});
    proposed.show(model);
    EXPECT_NE(printed(model).indexOf("After the repair\n  Echo view 45° | LA mean 8 mmHg, v wave 12 mmHg · 1 measurement"), -1)
        << printed(model).toStdString();
}

TEST(EvidenceModel, AnOfferListsPatientsAndHidesTheirNamesWhenAsked) {
    EvidenceModel model;
    auto index = std::make_shared<dicomio::SeriesIndex>(*fixture::indexWithPictures());
    index->series.push_back(index->series.front());
    index->series.back().patientId = "P-2";
    index->series.back().patientName = "Invented^Second";
    model.setOffer(index);
    EXPECT_TRUE(printed(model).contains("Invented^Second, ID P-2"));
    const QModelIndex second = model.index(1, 0);
    EXPECT_EQ(model.phaseAt(model.index(0, 0, second)), (std::pair<std::size_t, std::size_t>(index->series.size() - 1, 1)));
    model.setNamesHidden(true);
    EXPECT_FALSE(printed(model).contains("Invented"));
    EXPECT_FALSE(printed(model).contains("P-2"));
}

TEST(EvidenceModel, HeadingsAndRefusedSeriesCannotBeChosen) {
    EvidenceModel model;
    Proposed proposed;
    proposed.show(model);
    EXPECT_FALSE(model.flags(model.index(0, 0)) & Qt::ItemIsSelectable);
    const QModelIndex last = model.index(model.rowCount() - 1, 0);
    EXPECT_FALSE(model.flags(model.index(0, 0, last)) & Qt::ItemIsSelectable);
}

TEST(ProposeEvidence, NeverOverridesWhatThePersonSet) {
    Proposed proposed;
    EXPECT_EQ(proposed.document.undoStack().count(), 0) << "a proposal is no undoable act";
    auto& document = proposed.document;
    document.push(std::make_unique<app::ChangeStage>(document, "2.25.201", core::Stage::AfterRepair));
    document.push(std::make_unique<app::ChangeProbeAngle>(document, "2.25.203", 315.0));
    app::proposeEvidence(document, *proposed.index, proposed.patient);
    EXPECT_EQ(document.record().evidence.at("2.25.201").content.stage, core::Stage::AfterRepair);
    EXPECT_DOUBLE_EQ(*document.record().evidence.at("2.25.203").content.probeAngleDeg, 135.0);
    document.undoStack().undo();
    EXPECT_FALSE(document.record().evidence.at("2.25.203").content.probeAngleDeg);
    document.undoStack().redo();
    EXPECT_TRUE(document.record().evidence.at("2.25.203").content.probeAngleDeg);
}

TEST(ProposeEvidence, ADifferentPatientIsNoEvidence) {
    app::CaseDocument document;
    app::proposeEvidence(document, *fixture::indexWithPictures(), "someone else");
    EXPECT_TRUE(document.record().evidence.empty());
}
