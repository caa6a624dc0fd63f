// What every image of the sample case needs when it is written: who and when, attributes put one by one, and the file.
// For the writers' .cpp files (DCMTK inside).
#pragma once

#include "sample-data/dicom/ct_writer.h" // uidFrom, decimalString
#include "sample-data/dicom/image_facts.h"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dctk.h>

#include <initializer_list>
#include <string>
#include <vector>

namespace gauge::sample_case {

/// Numbers as a decimal string of several values.
std::string decimals(const std::vector<double>& values);

/// Puts attributes into one data set or item. The first failure is kept; what follows is skipped.
class ItemWriter {
public:
    ItemWriter(DcmItem& item, std::string& problem) : m_item(&item), m_problem(&problem) {}

    void text(const DcmTagKey& tag, const std::string& value);
    void us(const DcmTagKey& tag, int value);
    void ul(const DcmTagKey& tag, unsigned long value);
    void sl(const DcmTagKey& tag, long value);
    void fl(const DcmTagKey& tag, const std::vector<float>& values);
    void fd(const DcmTagKey& tag, const std::vector<double>& values);
    void at(const DcmTagKey& tag, const DcmTagKey& value);
    void ulList(const DcmTagKey& tag, const std::vector<unsigned int>& values);
    /// An empty sequence.
    void sequence(const DcmTagKey& tag);
    /// Appends an item to a sequence.
    ItemWriter item(const DcmTagKey& tag);
    /// Appends a coded entry.
    ItemWriter code(const DcmTagKey& tag, const CodedWord& word);
    void pixels(const std::vector<const std::vector<std::uint8_t>*>& frames);

private:
    template <class Step> void note(const DcmTagKey& tag, const Step& step) {
        if (!m_problem->empty()) return;
        if (const OFCondition condition = step(); condition.bad())
            *m_problem = std::string(tag.toString().c_str()) + ": " + condition.text();
    }
    DcmItem* m_item;
    std::string* m_problem;
};

class DicomObject {
public:
    /// Patient, study, series, equipment and SOP modules.
    DicomObject(const char* sopClass, const ImageFacts& facts);

    ItemWriter root() { return {*m_file.getDataset(), m_problem}; }
    /// @param runLength  RLE Lossless in place of Explicit VR Little Endian.
    /// @errors OutputUnwritable naming the file and the reason.
    core::Result<void> save(const std::filesystem::path& file, bool runLength = false);

private:
    DcmFileFormat m_file;
    std::string m_problem;
};

} // namespace gauge::sample_case
