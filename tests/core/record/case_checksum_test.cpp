#include "core/record/case_checksum.h"

#include "core/record/case_json.h"
#include "tests/core/record/random_edits.h"

#include <gtest/gtest.h>

using namespace gauge::core;

// FIPS 180-4 examples, as printed by NIST ("SHA256.pdf", one and two blocks).
TEST(Sha256, GivesThePublishedDigests) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST(Checksum, MatchesWhatCaseTextWrites) {
    EXPECT_TRUE(rc::check("checksum of any case", [] {
        CaseFile file;
        file.journal = testing_edits::journal();
        file.record = replay(file.journal);
        file.unknown = testing_edits::unknown();
        RC_ASSERT(checksumOf(caseText(file)) == Checksum::Matches);
    }));
}

TEST(Checksum, DiffersAfterAnyBitFlip) {
    CaseFile file;
    file.journal.append(SetMark{MarkKind::Tip, Mark{{Eigen::Vector3d(1, 2, 3)}, 1, UnknownFields::object()}}, "reader", "");
    file.record = replay(file.journal);
    const std::string good = caseText(file);
    for (std::size_t at = 0; at < good.size(); ++at)
        for (int bit = 0; bit < 8; ++bit) {
            std::string bad = good;
            bad[at] = static_cast<char>(bad[at] ^ (1 << bit));
            const auto verdict = checksumOf(bad);
            // A damaged key looks like a file that never had a checksum; the reader then finds the unknown key or no JSON.
            EXPECT_NE(verdict, Checksum::Matches) << "byte " << at << ", bit " << bit;
        }
}

TEST(Checksum, IsAbsentInFilesThatNeverHadOne) {
    EXPECT_EQ(checksumOf("{\"format\": \"ostium-gauge/case/1\"}"), Checksum::Absent);
}
