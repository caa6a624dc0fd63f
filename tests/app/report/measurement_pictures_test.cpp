#include "app/report/measurement_pictures.h"

#include "app/drawing/palette.h"
#include "tests/app/support/synthetic_case.h"

#include <QColor>
#include <QImage>
#include <QTemporaryDir>
#include <fstream>
#include <gtest/gtest.h>

namespace {

using namespace gauge;
using fixture::syntheticMarks;
using fixture::syntheticMeasurement;
using fixture::syntheticVolume;

std::filesystem::path pathOf(const QTemporaryDir& folder) {
    return folder.path().toStdString();
}

/// Pixels near a colour, halo and smoothing allowed for.
int countNear(const QImage& image, const QColor& colour) {
    constexpr int kTolerance = 40;
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor c = image.pixelColor(x, y);
            count += std::abs(c.red() - colour.red()) + std::abs(c.green() - colour.green()) +
                                 std::abs(c.blue() - colour.blue()) <
                             kTolerance
                         ? 1
                         : 0;
        }
    return count;
}

} // namespace

TEST(WritePictures, WritesOnePictureAViewWithoutAnApplication) {
    const QTemporaryDir folder;
    const auto written =
        app::writePictures(*syntheticVolume(), syntheticMeasurement(), pathOf(folder) / "new");
    ASSERT_TRUE(written) << written.error().message;
    ASSERT_EQ(written->size(), 4u);
    const char* names[] = {"long-section.png", "ostium.png", "landing-zone.png", "depth-strip.png"};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ((*written)[i].filename(), names[i]);
        EXPECT_FALSE(QImage(QString::fromStdString((*written)[i].string())).isNull());
    }
}

TEST(WritePictures, DrawsOstiumLandingZoneAndAxisInTheirColours) {
    const QTemporaryDir folder;
    const auto written = app::writePictures(*syntheticVolume(), syntheticMeasurement(), pathOf(folder));
    ASSERT_TRUE(written);
    const QImage longSection(QString::fromStdString((*written)[0].string()));
    constexpr int kLinePixels = 200; // a line across the appendage is several hundred pixels
    for (const app::Role role : {app::Role::Ostium, app::Role::Landing, app::Role::Axis})
        EXPECT_GT(countNear(longSection, app::colourOf(role)), kLinePixels)
            << app::wordOf(role).toStdString();
    const QImage ostium(QString::fromStdString((*written)[1].string()));
    EXPECT_GT(countNear(ostium, app::colourOf(app::Role::Ostium)), kLinePixels);
    EXPECT_EQ(countNear(ostium, app::colourOf(app::Role::Landing)), 0);
}

TEST(WritePictures, SaysWhichFolderCannotBeMade) {
    const QTemporaryDir folder;
    const auto file = pathOf(folder) / "taken";
    std::ofstream(file) << "a file";
    const auto written = app::writePictures(*syntheticVolume(), syntheticMeasurement(), file);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_NE(written.error().message.find("Cannot make the folder " + file.string()), std::string::npos);
}

TEST(WriteSeedPictures, WritesOnePictureAMark) {
    const QTemporaryDir folder;
    const auto written = app::writeSeedPictures(*syntheticVolume(), syntheticMarks(), pathOf(folder),
                                                "The tip lies in the wall.");
    ASSERT_TRUE(written) << written.error().message;
    ASSERT_EQ(written->size(), 4u);
    EXPECT_EQ(written->front().filename(), "atrium.png");
    EXPECT_EQ(written->back().filename(), "ridge.png");
    const QImage tip(QString::fromStdString((*written)[1].string()));
    constexpr int kMarkerPixels = 30; // three triangles of about 5 pixels radius
    EXPECT_GT(countNear(tip, app::colourOf(app::Role::Tip)), kMarkerPixels);
}
