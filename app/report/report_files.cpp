#include "app/report/report_files.h"

#include "app/document/seats.h"
#include "app/drawing/palette.h"
#include "app/format/words.h"
#include "app/models/comparison_model.h"
#include "app/report/case_report.h"
#include "app/report/measurement_pictures.h"
#include "app/report/report_json.h"
#include "app/report/value_table.h"
#include "dicomio/report/new_object.h"
#include "dicomio/report/report_from_record.h"
#include "core/anatomy/appendage_surface.h"
#include "dicomio/report/gather_sources.h"

#include <QCoreApplication>
#include <QFile>
#include <QSaveFile>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
namespace fs = std::filesystem;

QString programName() {
    return QStringLiteral("Ostium Gauge ") + QStringLiteral(GAUGE_VERSION);
}

core::Result<void> writeBytes(const fs::path& file, const std::string& bytes) {
    QSaveFile out(QString::fromStdString(file.string()));
    const auto size = static_cast<qint64>(bytes.size());
    if (out.open(QIODevice::WriteOnly) && out.write(bytes.data(), size) == size && out.commit()) return {};
    return failure(ErrorCode::OutputUnwritable, "Cannot write " + file.string() + ": " + out.errorString().toStdString() +
                                                    ". Choose another folder, or make room.");
}

/// The measurement's pictures for the screen's language; none without images or measurement.
std::vector<MeasurementPicture> keyPictures(Answers& answers, PictureUse use) {
    Session& session = answers.session();
    const core::Volume* volume = session.volume();
    const core::AppendageMeasurement* measurement = session.measurement();
    if (!volume || !measurement) return {};
    return measurementPictures(*volume, *measurement, use, answers.seats().chosen());
}

std::vector<ReportPicture> forPaper(const std::vector<MeasurementPicture>& pictures) {
    std::vector<ReportPicture> all;
    for (const MeasurementPicture& picture : pictures) {
        // All of them fit on one page of either paper: two squares side by side, the long section, the strip below.
        const double shape = static_cast<double>(picture.image.height()) / std::max(1, picture.image.width());
        all.push_back({picture.image, picture.title, shape > 0.75 ? 0.45 : shape > 0.45 ? 0.7 : 0.85});
    }
    // Squares side by side: wide ones after them.
    std::stable_partition(all.begin(), all.end(), [](const ReportPicture& picture) { return picture.widthShare < 0.5; });
    return all;
}

/// Plots are drawn dark on white while it lives; pictures of the patient stay as they are.
class LightTheme {
public:
    LightTheme() : m_before(theme()) { setTheme(Theme::Light); }
    ~LightTheme() { setTheme(m_before); }
    LightTheme(const LightTheme&) = delete;
    LightTheme& operator=(const LightTheme&) = delete;

private:
    Theme m_before;
};

/// Writes the files one after the other; the first failure ends it.
class Writer {
public:
    Writer(Answers& answers, const fs::path& folder, const ReportRequest& request)
        : m_answers(answers), m_folder(folder), m_request(request), m_time(currentTime()) {}

    core::Result<ReportFiles> write() {
        std::error_code code;
        fs::create_directories(m_folder / "pictures", code);
        if (code)
            return failure(ErrorCode::OutputUnwritable, "Cannot make the folder " + (m_folder / "pictures").string() + ": " +
                                                            code.message() + ". Choose another folder.");
        const auto done = printed()
                              .and_then([&] { return tables(); })
                              .and_then([&] { return pictures(); })
                              .and_then([&] { return m_request.namesHidden ? core::Result<void>() : objects(); });
        if (!done) return tl::make_unexpected(done.error());
        return std::move(m_files);
    }

private:
    core::Result<void> add(const fs::path& file, core::Result<void> written) {
        if (written) m_files.written.push_back(file);
        return written;
    }

    core::Result<void> printed() {
        m_pdf = m_folder / "report.pdf";
        return add(m_pdf, writePdf(printedReport(m_answers, m_request.namesHidden), m_request.paper, m_pdf));
    }

    core::Result<void> tables() {
        const fs::path csv = m_folder / "values.csv", json = m_folder / "report.json";
        core::CaseRecord record = m_answers.record();
        if (m_request.namesHidden) forgetPersons(record);
        return add(csv, writeBytes(csv, valuesCsv(record))).and_then([&] {
            return add(json, writeBytes(json, reportJson(m_answers, m_request.namesHidden, programName(), m_time)));
        });
    }

    core::Result<void> pictures() {
        m_pictures = keyPictures(m_answers, PictureUse::Screen);
        if (m_pictures.empty())
            m_files.notices.push_back({"report-without-images",
                                       "The images of the case are not at hand, or nothing is measured on them: the report has no "
                                       "pictures and no DICOM objects.",
                                       {}});
        for (const MeasurementPicture& picture : m_pictures) {
            const fs::path file = m_folder / "pictures" / (picture.name + ".png");
            if (!picture.image.save(QString::fromStdString(file.string()), "PNG"))
                return failure(ErrorCode::OutputUnwritable, "Cannot write the picture " + file.string() + ". Check that the folder "
                                                            "can be written to and has room.");
            m_files.written.push_back(file);
        }
        return {};
    }

    /// SR, PDF, key images and surface as DICOM, in the study of the CT. Needs the images: an object refers to what it rests
    /// on.
    core::Result<void> objects() {
        const LoadedImages* images = m_answers.session().images();
        if (!images) return {};
        m_sources.device = device();
        m_sources.time = m_time.toStdString();
        if (const auto* measurement = m_answers.session().measurement()) m_sources.contours = dicomio::contoursOf(*measurement);
        for (const core::Notice& notice : warnings())
            m_sources.warnings.push_back(notice.text);
        for (const QString& caution : cautionParagraphs())
            m_sources.cautions.push_back(caution.toStdString());
        if (const auto gathered = dicomio::gatherSources(*images->index, m_answers.record(), m_sources); !gathered) {
            if (gathered.error().code != ErrorCode::NotFound) return gathered;
            // Images of a test, or a folder that has vanished.
            m_files.notices.push_back({"report-without-images", gathered.error().message + " No DICOM object was written.", {}});
            return {};
        }
        return structuredReport().and_then([&] { return encapsulatedPdf(); }).and_then([&] { return keyImages(); }).and_then([&] {
            return surface();
        });
    }

    core::Result<void> structuredReport() {
        const auto content = dicomio::reportFromRecord(m_answers.record(), m_sources);
        if (!content) return tl::make_unexpected(content.error());
        m_patient = content->patient;
        return keep(dicomio::writeStructuredReport(*content, m_folder / "report-sr.dcm"));
    }

    core::Result<void> encapsulatedPdf() {
        QFile pdf(QString::fromStdString(m_pdf.string()));
        if (!pdf.open(QIODevice::ReadOnly))
            return failure(ErrorCode::FileUnreadable, "Cannot read " + m_pdf.string() + " again: " + pdf.errorString().toStdString());
        const QByteArray bytes = pdf.readAll();
        const std::span<const std::uint8_t> span(reinterpret_cast<const std::uint8_t*>(bytes.constData()),
                                                 static_cast<std::size_t>(bytes.size()));
        return keep(dicomio::writeEncapsulatedPdf(context("Report"), span, "Closure of the left atrial appendage",
                                                  m_folder / "report-pdf.dcm"));
    }

    core::Result<void> keyImages() {
        dicomio::ObjectContext where = context("Key images");
        where.seriesUid = dicomio::newUid();
        for (const MeasurementPicture& picture : m_pictures) {
            const QImage rgb = picture.image.convertToFormat(QImage::Format_RGB888);
            dicomio::RgbPicture plain{rgb.width(), rgb.height(), {}, picture.title.toStdString()};
            for (int y = 0; y < rgb.height(); ++y)
                plain.bytes.insert(plain.bytes.end(), rgb.constScanLine(y), rgb.constScanLine(y) + 3 * rgb.width());
            if (auto kept = keep(dicomio::writeKeyImage(where, plain, m_folder / "pictures" / (picture.name + ".dcm"))); !kept)
                return kept;
            ++where.instanceNumber;
        }
        return {};
    }

    /// The blood's surface, plain and as an object. A measurement from a test has no working data: then there is none.
    core::Result<void> surface() {
        const core::Volume* volume = m_answers.session().volume();
        const core::AppendageMeasurement* measurement = m_answers.session().measurement();
        if (!volume || !measurement) return {};
        const auto made = core::appendageSurface(*volume, *measurement);
        if (!made) {
            m_files.notices.push_back({"report-without-surface", "There is no surface: " + made.error().message, {}});
            return {};
        }
        dicomio::TriangleMesh mesh;
        for (const Eigen::Vector3f& point : made->mesh.points)
            mesh.corners.push_back({point.cast<double>()});
        mesh.triangles.assign(made->mesh.triangles.begin(), made->mesh.triangles.end());
        const fs::path plain = m_folder / "surface.stl";
        return add(plain, dicomio::writeStl(mesh, plain)).and_then([&] {
            return keep(dicomio::writeEncapsulatedStl(context("Surface"), mesh, volume->frameOfReferenceUid(),
                                                      "Blood of the left atrium and its appendage", m_folder / "surface-stl.dcm"));
        });
    }

    core::Result<void> keep(const core::Result<dicomio::WrittenObject>& object) {
        if (!object) return tl::make_unexpected(object.error());
        m_files.written.push_back(object->file);
        return {};
    }

    dicomio::ObjectContext context(const char* description) const {
        dicomio::ObjectContext c;
        c.patient = m_patient;
        c.study = m_sources.study;
        c.device = device();
        c.time = m_time.toStdString();
        c.description = description;
        const auto& record = m_answers.record();
        for (const dicomio::SourceImage& image : m_sources.images)
            if (record.images && image.seriesUid == record.images->seriesUid) c.sources.push_back(image);
        return c;
    }

    static dicomio::ReportDevice device() {
        dicomio::ReportDevice d;
        d.manufacturer = "Ostium Gauge (research and teaching)";
        d.model = "Ostium Gauge";
        d.softwareVersion = GAUGE_VERSION;
        return d;
    }

    std::vector<core::Notice> warnings() const {
        std::vector<core::Notice> all;
        if (const core::SizingAnswer* a = m_answers.sizing()) {
            all = a->warnings;
            if (const core::SizeFit* size = m_answers.chosenSize())
                all.insert(all.end(), size->warnings.begin(), size->warnings.end());
        }
        const auto& stasis = m_answers.stasis().warnings;
        all.insert(all.end(), stasis.begin(), stasis.end());
        return all;
    }

    Answers& m_answers;
    fs::path m_folder, m_pdf;
    ReportRequest m_request;
    QString m_time;
    dicomio::ReportSources m_sources;
    dicomio::ReportPatient m_patient;
    std::vector<MeasurementPicture> m_pictures;
    ReportFiles m_files;
};

} // namespace

PrintedReport printedReport(Answers& answers, bool namesHidden) {
    const LightTheme paper;
    ComparisonModel comparison;
    comparison.setAnswers(answers);
    CaseReportSource source;
    source.answers = &answers;
    source.comparison = &comparison;
    source.pictures = forPaper(keyPictures(answers, PictureUse::Paper));
    if (const LoadedImages* images = answers.session().images()) source.volume = images->ct.volume;
    source.landing = answers.session().landing();
    source.namesHidden = namesHidden;
    source.program = programName();
    source.time = currentTime();
    return caseReport(source);
}

core::Result<ReportFiles> writeReportFiles(Answers& answers, const fs::path& folder, const ReportRequest& request) {
    return Writer(answers, folder, request).write();
}

} // namespace gauge::app
