// A session with echo views and an X-ray run whose cines are written down from formulas, for the tests of views and pages.
#pragma once

#include "app/document/picture_drawings.h"
#include "app/views/cine_view.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <QTest>

namespace gauge::fixture {

// A screen pixel is a good part of a picture pixel: places by mouse are exact to half of one.
constexpr double kMousePx = 0.5;

struct Pages {
    app::Session session;
    app::ViewState state;
    app::EvidenceImages images{session};
    app::PictureDrawings drawings{session, images};
    bool calibrated = true;
    bool withSpectrum = false; ///< the lower half of echo pictures is a spectral region

    Pages() {
        images.setOpener([this](const core::Evidence& evidence, const auto&) -> core::Result<app::CineData> {
            app::CineData data;
            if (evidence.kind == core::EvidenceKind::Fluoroscopy) {
                data.frames = fixture::xrayFrames(3);
                dicomio::XrayCine run;
                run.frames = data.frames;
                run.facts.frames.resize(3);
                for (auto& frame : run.facts.frames)
                    frame.angles = core::CArmAngles{-30.0, 20.0};
                run.facts.scaleText = "The file tells no scale.";
                data.xray = run;
                return data;
            }
            const auto cine = fixture::echoCine(evidence.sopInstanceUid, evidence.probeAngleDeg.value_or(0.0), 24.0);
            data.frames = cine.frames;
            data.times = cine.times;
            if (calibrated) data.regions = cine.regions;
            if (withSpectrum) {
                data.regions.front().box.maxY = 59;
                core::EchoRegion spectrum;
                spectrum.kind = core::EchoRegionKind::Spectral;
                spectrum.box = {0, 60, 159, 119};
                spectrum.x = {core::PhysicalUnit::Second, 0.005, 0.0, 0.0};
                spectrum.y = {core::PhysicalUnit::CentimetrePerSecond, -2.0, 100.0, 0.0};
                data.regions.push_back(spectrum);
            }
            return data;
        });
        auto loaded = fixture::syntheticImages();
        loaded.index = fixture::indexWithPictures();
        session.setEngine(fixture::syntheticEngine());
        session.open(std::move(loaded));
    }
    const core::CaseRecord& record() const { return session.record(); }
    const core::Estimate* valueOf(const std::string& drawing, const std::string& id) const {
        for (const auto& value : record().values)
            if (value.group == "drawing/" + drawing && value.id == id) return &value.estimate;
        return nullptr;
    }
    const core::Estimate* echoValue(const std::string& id) const {
        for (const auto& value : record().values)
            if (value.group == "echo/before-repair" && value.id == id) return &value.estimate;
        return nullptr;
    }
};

inline QPoint at(const app::CineView& view, double x, double y) {
    return view.screenFromPixel().map(QPointF(x, y)).toPoint();
}

inline bool isOpen(const app::CineView& view) {
    return fixture::waitUntil([&] { return view.data() != nullptr; });
}

inline void drag(app::CineView& view, const QPoint& from, const QPoint& to) {
    QTest::mousePress(&view, Qt::LeftButton, {}, from);
    QTest::mouseMove(&view, to);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
}

} // namespace gauge::fixture
