// A measurement report as plain values: what the DICOM Structured Report (structured_report.h) holds and what
// is read back from one. Made from a case by report_from_record.h. The words are English; the report says so.
//
//   ReportContent ── images (evidence)            MeasurementGroup ── what, where, when, at which pressure
//        ├── groups ───────────────────────────────────┤── measurements (number, unit, uncertainty, method)
//        ├── warnings, cautions, conclusion             ├── findings (coded or in words)
//        └── observers, device, procedure               └── regions on pictures and in the patient
#pragma once

#include "core/geometry/points.h"

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// A coded entry: value, scheme designator ("DCM", "SCT", "LN", "UCUM", "99OSTIUM"…) and meaning in English.
struct Code {
    std::string value;
    std::string scheme;
    std::string meaning;

    /// Codes are equal when value and scheme are; meanings may be worded differently.
    bool operator==(const Code& other) const { return value == other.value && scheme == other.scheme; }
};

struct ReportPatient {
    std::string name; ///< components joined by '^'
    std::string id;
    std::string issuerOfId;
    std::string birthDate; ///< YYYYMMDD, or empty
    std::string sex;       ///< "F", "M", "O", or empty

    bool operator==(const ReportPatient&) const = default;
};

/// The study that the new objects become part of.
struct ReportStudy {
    std::string studyUid; ///< not empty
    std::string studyId;
    std::string accessionNumber;
    std::string date; ///< YYYYMMDD, or empty
    std::string time; ///< HHMMSS, or empty
    std::string referringPhysician;
    std::string description;

    bool operator==(const ReportStudy&) const = default;
};

/// An image that the report may refer to: where it belongs decides where a receiver looks for it.
struct SourceImage {
    std::string studyUid;
    std::string seriesUid;
    std::string sopClassUid;
    std::string sopInstanceUid;
    std::string modality; ///< "CT", "US", "XA"

    bool operator==(const SourceImage&) const = default;
};

/// An image, or one frame of it.
struct FrameReference {
    std::string sopInstanceUid;
    std::optional<int> frame; ///< 0-based; none: the image as a whole

    bool operator==(const FrameReference&) const = default;
};

/// Polygons are closed, their first point is not repeated. An ellipse has four points: the ends of its longer
/// axis, then those of the shorter one.
enum class RegionKind { Point, Points, Polyline, Polygon, Ellipse };

/// Whether a region of that kind can have that many points.
bool fits(RegionKind kind, std::size_t points);

/// On one frame; (column, row) in pixels, whole numbers at pixel centres as everywhere here. (In the file the
/// corner of the first pixel is 0\0, PS3.3 C.18.6.1.2; writer and reader shift by half a pixel.)
struct PictureRegion {
    RegionKind kind = RegionKind::Polyline;
    std::vector<Eigen::Vector2d> points;
    FrameReference image;

    bool operator==(const PictureRegion&) const = default;
};

/// In the patient, LPS mm. Polygons are planar. The file holds 32-bit numbers: 0.00002 mm at 200 mm from the
/// origin.
struct PatientRegion {
    RegionKind kind = RegionKind::Polygon;
    std::vector<core::PatientPoint> points;
    std::string frameOfReferenceUid;

    bool operator==(const PatientRegion&) const = default;
};

/// A part of a standard uncertainty, in the unit of the value: {"edge", 0.12}.
struct UncertaintyPart {
    std::string name;
    double value = 0.0;

    bool operator==(const UncertaintyPart&) const = default;
};

struct ReportMeasurement {
    Code name; ///< the concept: what was measured
    double value = 0.0;
    Code unit;                                 ///< UCUM
    std::optional<double> standardUncertainty; ///< one standard deviation, in `unit`
    std::vector<UncertaintyPart> uncertaintyParts;
    std::string method;             ///< in words; may be empty
    std::optional<Code> methodCode; ///< besides the words
    std::optional<Code> derivation; ///< maximum, minimum, mean, estimated…
    std::optional<Code> site;       ///< where it differs from the group's
    std::string trackingId;         ///< the record's group and id of the value: "ct:landing-1/area"
    std::string trackingUid;
    std::string time;                   ///< ISO 8601, or empty
    std::vector<FrameReference> images; ///< that this number alone rests on
    std::vector<PictureRegion> pictureRegions;

    bool operator==(const ReportMeasurement&) const = default;
};

/// A statement that is no number: coded, or in words where `value` is absent.
struct ReportFinding {
    Code name;
    std::optional<Code> value;
    std::string text;

    bool operator==(const ReportFinding&) const = default;
};

/// Pressure of the left atrium that holds for a group, mmHg.
struct ReportPressure {
    std::string moment; ///< name of the moment in the record
    std::optional<double> meanMmHg;
    std::optional<double> standardUncertaintyMmHg;
    std::optional<double> vWaveMmHg;

    bool operator==(const ReportPressure&) const = default;
};

/// What belongs together: one section, one moment, one drawing.
struct MeasurementGroup {
    std::string trackingId; ///< for people: "ostium", "landing-1", "echo/baseline"
    std::string trackingUid;
    std::optional<Code> finding;
    std::vector<Code> sites;
    std::string stage; ///< of the patient's course, in words; may be empty
    std::optional<Code> stageCode;
    std::optional<ReportPressure> pressure;
    std::optional<Code> beatPhase;      ///< end of systole or diastole
    std::string phase;                  ///< of the images, in words: "45 %"; may be empty
    std::string author;                 ///< who measured; may be empty
    std::vector<FrameReference> images; ///< that the whole group rests on
    std::vector<PictureRegion> pictureRegions;
    std::vector<PatientRegion> patientRegions;
    std::vector<ReportMeasurement> measurements;
    std::vector<ReportFinding> findings;
    std::vector<std::string> comments;

    bool operator==(const MeasurementGroup&) const = default;
};

struct ReportDevice {
    std::string uid; ///< of this installation; empty: one is made for the program and its version
    std::string manufacturer;
    std::string model;
    std::string serialNumber;
    std::string softwareVersion;

    bool operator==(const ReportDevice&) const = default;
};

struct ReportSignature {
    std::string name;
    std::string organization;
    std::string time; ///< ISO 8601 with offset

    bool operator==(const ReportSignature&) const = default;
};

struct ReportContent {
    Code title;
    std::string time; ///< of the report, ISO 8601 with offset; not empty
    ReportPatient patient;
    ReportStudy study;
    std::vector<Code> procedures;     ///< reported, at least one
    std::vector<std::string> persons; ///< observers
    std::string organization;         ///< of the observers; may be empty
    ReportDevice device;
    std::vector<SourceImage> images; ///< all that are referred to anywhere, and no others
    std::vector<MeasurementGroup> groups;
    std::vector<std::string> conclusions;
    std::vector<std::string> warnings;
    std::vector<std::string> cautions;
    std::optional<ReportSignature> signature; ///< of the decision: the report is then complete and verified

    bool operator==(const ReportContent&) const = default;
};

} // namespace gauge::dicomio
