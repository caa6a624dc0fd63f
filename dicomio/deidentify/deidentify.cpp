#include <dcmtk/config/osconfig.h>

#include "dicomio/deidentify/deidentify.h"

#include "dicomio/deidentify/clean_pixels.h"
#include "dicomio/deidentify/identity.h"
#include "dicomio/index/file_walk.h"
#include "dicomio/scan/scanner.h"
#include "dicomio/toolkit.h"

#include <cstdio>
#include <dcmtk/dcmdata/dctk.h>
#include <dcmtk/dcmdata/dcuid.h>
#include <fstream>
#include <iterator>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

OFFilename nameOf(const std::filesystem::path& path) {
    return OFFilename(path.c_str());
}

std::string textOf(DcmItem& item, const DcmTagKey& key) {
    OFString value;
    if (item.findAndGetOFStringArray(key, value).bad()) return {};
    return {value.c_str(), value.size()};
}

/// One data set on its way out.
class Cleaner {
public:
    Cleaner(const Pseudonyms& pseudonyms, const DeidentifyOptions& options, Identity identity, std::string patientId)
        : m_pseudonyms(pseudonyms), m_options(options), m_identity(std::move(identity)), m_patientId(std::move(patientId)),
          m_days(pseudonyms.dayShift(m_patientId)) {}

    void clean(DcmItem& item) const {
        for (unsigned long i = item.card(); i-- > 0;) {
            DcmElement* element = item.getElement(i);
            if (!keep(*element)) delete item.remove(element);
        }
    }

private:
    /// Changes the element as the profile asks; false when it goes.
    bool keep(DcmElement& element) const {
        const Tag tag{element.getGTag(), element.getETag()};
        // What an implicit file left open (OB or OW, US or SS) is settled by getVR; the names of DCMTK's own kinds are not used.
        const std::string vr = DcmVR(element.getVR()).getValidVRName();
        switch (fateOf(tag, vr, m_options)) {
        case Fate::Remove:
            return false;
        case Fate::Keep:
            return !element.isaString() || keepsWords(element);
        case Fate::Empty:
            return element.clear().good();
        case Fate::NewPatientId:
            return element.putString(m_pseudonyms.patientId(m_patientId).c_str()).good();
        case Fate::NewUid:
            return replaceUids(element);
        case Fate::MoveDate:
            return moveDates(element);
        case Fate::Descend:
            return descend(element);
        }
        return false;
    }

    /// Code strings and codes in which somebody wrote what belongs elsewhere go as well.
    bool keepsWords(DcmElement& element) const {
        OFString value;
        if (element.getOFStringArray(value, OFFalse).bad()) return false;
        const DcmEVR vr = element.ident();
        const bool number = vr == EVR_DS || vr == EVR_IS || vr == EVR_TM;
        return number || !m_identity.isIn({value.c_str(), value.size()});
    }

    template <class Replace> bool replaceEach(DcmElement& element, const Replace& replace) const {
        OFString all;
        if (element.getOFStringArray(all, OFFalse).bad()) return false;
        std::string out;
        std::string_view rest(all.c_str(), all.size());
        while (true) {
            const std::size_t end = rest.find('\\');
            const auto one = replace(rest.substr(0, end));
            if (!one) return false;
            out += *one;
            if (end == std::string_view::npos) break;
            out += '\\';
            rest.remove_prefix(end + 1);
        }
        return element.putString(out.c_str()).good();
    }

    bool replaceUids(DcmElement& element) const {
        return replaceEach(element, [&](std::string_view uid) { return std::optional(m_pseudonyms.uid(uid)); });
    }

    bool moveDates(DcmElement& element) const {
        return replaceEach(element, [&](std::string_view date) {
            return date.empty() ? std::optional<std::string>("") : shiftedDate(date, m_days);
        });
    }

    bool descend(DcmElement& element) const {
        auto& sequence = dynamic_cast<DcmSequenceOfItems&>(element);
        for (unsigned long n = 0; n < sequence.card(); ++n)
            clean(*sequence.getItem(n));
        return true;
    }

    const Pseudonyms& m_pseudonyms;
    const DeidentifyOptions& m_options;
    Identity m_identity;
    std::string m_patientId;
    int m_days;
};

/// Says in the file what was done (PS3.15 E.1.1; Patient Identity Removed and the method).
bool sayWhatWasDone(DcmDataset& dataset, const DeidentifyOptions& options, const std::string& patientId) {
    bool good = dataset.putAndInsertString(DCM_PatientIdentityRemoved, "YES").good() &&
                dataset.putAndInsertString(DCM_DeidentificationMethod, "PS3.15 Annex E, by a list of what stays").good() &&
                dataset.putAndInsertString(DCM_PatientID, patientId.c_str()).good() &&
                dataset.putAndInsertString(DCM_PatientName, patientId.c_str()).good();
    if (options.keepModifiedDates)
        good = good && dataset.putAndInsertString(DCM_LongitudinalTemporalInformationModified, "MODIFIED").good();
    else
        good = good && dataset.putAndInsertString(DCM_LongitudinalTemporalInformationModified, "REMOVED").good();
    int n = 0;
    for (const MethodCode& code : methodCodes(options)) {
        DcmItem* item = nullptr;
        good = good && dataset.findOrCreateSequenceItem(DCM_DeidentificationMethodCodeSequence, item, n++).good() &&
               item->putAndInsertString(DCM_CodeValue, code.value.c_str()).good() &&
               item->putAndInsertString(DCM_CodingSchemeDesignator, "DCM").good() &&
               item->putAndInsertString(DCM_CodeMeaning, code.meaning.c_str()).good();
    }
    return good;
}

bool putCleanPixels(DcmDataset& dataset, const CleanFrames& clean) {
    for (const DcmTagKey& key : {DCM_RedPaletteColorLookupTableDescriptor, DCM_GreenPaletteColorLookupTableDescriptor,
                                 DCM_BluePaletteColorLookupTableDescriptor, DCM_RedPaletteColorLookupTableData,
                                 DCM_GreenPaletteColorLookupTableData, DCM_BluePaletteColorLookupTableData,
                                 DCM_SegmentedRedPaletteColorLookupTableData, DCM_SegmentedGreenPaletteColorLookupTableData,
                                 DCM_SegmentedBluePaletteColorLookupTableData, DCM_PixelData, DCM_ExtendedOffsetTable,
                                 DCM_ExtendedOffsetTableLengths, DCM_WindowCenter, DCM_WindowWidth, DCM_PixelPaddingValue,
                                 DCM_SmallestImagePixelValue, DCM_LargestImagePixelValue})
        dataset.findAndDeleteElement(key);
    return dataset.putAndInsertString(DCM_PhotometricInterpretation, "RGB").good() &&
           dataset.putAndInsertUint16(DCM_SamplesPerPixel, 3).good() &&
           dataset.putAndInsertUint16(DCM_PlanarConfiguration, 0).good() &&
           dataset.putAndInsertUint16(DCM_BitsAllocated, 8).good() && dataset.putAndInsertUint16(DCM_BitsStored, 8).good() &&
           dataset.putAndInsertUint16(DCM_HighBit, 7).good() && dataset.putAndInsertUint16(DCM_PixelRepresentation, 0).good() &&
           dataset.putAndInsertString(DCM_BurnedInAnnotation, "NO").good() &&
           dataset.putAndInsertUint8Array(DCM_PixelData, clean.samples.data(), clean.samples.size()).good();
}

tl::unexpected<core::Error> refused(const std::filesystem::path& original, ErrorCode code, const std::string& why) {
    return failure(code, "Cannot export " + original.string() + " without identity: " + why);
}

tl::unexpected<core::Error> unwritable(const std::filesystem::path& target, const std::string& why) {
    return failure(ErrorCode::OutputUnwritable,
                   "Cannot write " + target.string() + ": " + why + ". Choose another folder, or make room.");
}

core::Result<std::string> bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    if (!in.good() && !in.eof()) return unwritable(file, "what was written cannot be read back");
    return bytes;
}

/// The last look: nothing of the original's identity in what was written.
core::Result<void> searchForIdentity(const std::filesystem::path& written, const Identity& identity, std::uint64_t pixelBytes) {
    // By chance alone a text of 6 bytes occurs among 1 GB of random pixels with a chance of 4 in a million, one of 4 in each.
    constexpr std::size_t kShortestInHead = 4, kShortestAnywhere = 6;
    auto bytes = bytesOf(written);
    if (!bytes) return tl::make_unexpected(bytes.error());
    const std::size_t head = bytes->size() > pixelBytes ? bytes->size() - static_cast<std::size_t>(pixelBytes) : bytes->size();
    if (identity.isInBytes(*bytes, kShortestAnywhere) ||
        identity.isInBytes(std::string_view(*bytes).substr(0, head), kShortestInHead))
        return failure(ErrorCode::ObjectUnsupported, "a name or number of the patient was still found in it.");
    return {};
}

} // namespace

core::Result<DeidentifiedFile> deidentifyFile(const std::filesystem::path& original, const std::filesystem::path& target,
                                              const Pseudonyms& pseudonyms, const DeidentifyOptions& options) {
    initialiseToolkit();
    const auto scanned = scanFile(original);
    if (!scanned) return refused(original, scanned.error().code, scanned.error().message);
    if (!scanned->pixels || !scanned->format || scanned->isDirectory())
        return refused(original, ErrorCode::ObjectUnsupported,
                       "it is no image; reports, documents and other objects hold words that cannot be cleaned.");
    DcmFileFormat file;
    if (const OFCondition loaded = file.loadFile(nameOf(original)); loaded.bad())
        return refused(original, ErrorCode::FileDamaged, loaded.text());
    DcmDataset& dataset = *file.getDataset();
    E_TransferSyntax syntax = dataset.getOriginalXfer();
    DeidentifiedFile out{target, {}, {}};

    std::optional<CleanFrames> clean;
    if (options.cleanPixels && mayHaveBurnedInText(*scanned, textOf(dataset, DCM_BurnedInAnnotation))) {
        const auto boxes = calibratedBoxes(*scanned);
        if (boxes.empty())
            return refused(original, ErrorCode::ObjectUnsupported,
                           "it may carry text in its pixels, and no region tells where the image ends and the text begins.");
        auto frames = framesWithin(*scanned, boxes);
        if (!frames) return refused(original, frames.error().code, frames.error().message);
        clean = std::move(*frames);
        out.notices.push_back({"burned-in-text",
                               "Everything outside the calibrated regions was made black. Text inside a region stays: look at "
                               "the picture before you pass it on.",
                               {}});
    }

    Identity identity;
    identity.collect(dataset);
    const std::string patient = textOf(dataset, DCM_PatientID);
    Cleaner(pseudonyms, options, identity, patient).clean(dataset);
    if (clean) {
        if (!putCleanPixels(dataset, *clean)) return refused(original, ErrorCode::Internal, "its pixels could not be replaced.");
        syntax = EXS_LittleEndianExplicit;
    }
    if (!sayWhatWasDone(dataset, options, pseudonyms.patientId(patient)))
        return refused(original, ErrorCode::Internal, "the mark that identity was removed could not be set.");
    out.sopInstanceUid = textOf(dataset, DCM_SOPInstanceUID);

    std::filesystem::path temporary = target;
    temporary += ".part";
    std::error_code ignored;
    file.getMetaInfo()->clear();
    if (const OFCondition saved = file.saveFile(nameOf(temporary), syntax, EET_ExplicitLength, EGL_recalcGL, EPD_noChange, 0, 0,
                                                EWM_fileformat);
        saved.bad()) {
        std::filesystem::remove(temporary, ignored);
        return unwritable(target, saved.text());
    }
    const std::uint64_t pixelBytes = clean ? clean->samples.size() : scanned->pixels->native.length;
    if (auto found = searchForIdentity(temporary, identity, pixelBytes); !found) {
        std::filesystem::remove(temporary, ignored);
        return refused(original, found.error().code, found.error().message);
    }
    std::error_code code;
    std::filesystem::rename(temporary, target, code);
    if (code) {
        std::filesystem::remove(temporary, ignored);
        return unwritable(target, code.message());
    }
    return out;
}

core::Result<DeidentifiedFolder> deidentifyFolder(const std::filesystem::path& original, const std::filesystem::path& target,
                                                  const Pseudonyms& pseudonyms, const DeidentifyOptions& options,
                                                  const core::WorkContext& work) {
    std::error_code code;
    std::filesystem::create_directories(target, code);
    if (code) return unwritable(target, code.message());
    if (!std::filesystem::is_empty(target, code) || code)
        return failure(ErrorCode::InvalidArgument, "Cannot export into " + target.string() +
                                                       ": the folder is not empty, and what is in it could be taken for part of "
                                                       "this export. Choose an empty folder.");
    const auto walked = walkFolder(original, work);
    if (!walked) return tl::make_unexpected(walked.error());
    DeidentifiedFolder all;
    std::size_t done = 0;
    for (const auto& file : walked->files) {
        if (work.stop.stop_requested()) return failure(ErrorCode::Cancelled, "The export was cancelled; what was written stays.");
        char name[16];
        std::snprintf(name, sizeof name, "%06zu.dcm", all.written.size() + 1);
        auto one = deidentifyFile(file, target / name, pseudonyms, options);
        if (one)
            all.written.push_back(std::move(*one));
        else if (one.error().code == ErrorCode::OutputUnwritable)
            return tl::make_unexpected(one.error());
        else if (one.error().code != ErrorCode::NotDicom)
            all.refused.push_back({"not-exported", one.error().message, {{"path", file.string()}}});
        ++done;
        work.report(static_cast<double>(done) / static_cast<double>(walked->files.size()));
    }
    return all;
}

} // namespace gauge::dicomio
