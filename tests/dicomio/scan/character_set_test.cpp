// Names in the character sets of the standard. The bytes are those that PS3.5 prints in its annexes H
// (Japanese), I (Korean), J (Unicode and GB18030) and K (Chinese with code extensions).
#include "dicomio/scan/character_set.h"

#include <gtest/gtest.h>

using gauge::dicomio::toUtf8;
using Sets = std::vector<std::string>;

TEST(ToUtf8, ReadsTheJapaneseExampleWithKanji) {
    // PS3.5 H.3.1: (0008,0005) \ISO 2022 IR 87.
    const std::string bytes =
        "Yamada^Tarou=\x1B$B;3ED\x1B(B^\x1B$BB@O:\x1B(B=\x1B$B$d$^$@\x1B(B^\x1B$B$?$m$&\x1B(B";
    EXPECT_EQ(toUtf8(bytes, {"", "ISO 2022 IR 87"}), "Yamada^Tarou=山田^太郎=やまだ^たろう");
}

TEST(ToUtf8, ReadsTheJapaneseExampleWithHalfWidthKatakana) {
    // PS3.5 H.3.2: (0008,0005) ISO 2022 IR 13\ISO 2022 IR 87.
    const std::string bytes = "\xD4\xCF\xC0\xDE^\xC0\xDB\xB3=\x1B$B;3ED\x1B(J^\x1B$BB@O:\x1B(J=\x1B$B$d$^$@"
                              "\x1B(J^\x1B$B$?$m$&\x1B(J";
    EXPECT_EQ(toUtf8(bytes, {"ISO 2022 IR 13", "ISO 2022 IR 87"}), "ﾔﾏﾀﾞ^ﾀﾛｳ=山田^太郎=やまだ^たろう");
}

TEST(ToUtf8, ReadsTheKoreanExample) {
    // PS3.5 I.2: (0008,0005) \ISO 2022 IR 149.
    const std::string bytes =
        "Hong^Gildong=\x1B$)C\xFB\xF3^\x1B$)C\xD1\xCE\xD4\xD7=\x1B$)C\xC8\xAB^\x1B$)C\xB1\xE6\xB5\xBF";
    EXPECT_EQ(toUtf8(bytes, {"", "ISO 2022 IR 149"}), "Hong^Gildong=洪^吉洞=홍^길동");
}

TEST(ToUtf8, ReadsTheUnicodeAndGb18030Examples) {
    // PS3.5 J.1 and J.2.
    EXPECT_EQ(toUtf8("Wang^XiaoDong=\xE7\x8E\x8B^\xE5\xB0\x8F\xE6\x9D\xB1=", {"ISO_IR 192"}),
              "Wang^XiaoDong=王^小東=");
    EXPECT_EQ(toUtf8("Wang^XiaoDong=\xCD\xF5^\xD0\xA1\xB6\xAB=", {"GB18030"}), "Wang^XiaoDong=王^小东=");
    EXPECT_EQ(toUtf8("Wang^XiaoDong=\xCD\xF5^\xD0\xA1\xB6\xAB=", {"GBK"}), "Wang^XiaoDong=王^小东=");
}

TEST(ToUtf8, ReadsTheChineseExampleWithCodeExtensions) {
    // PS3.5 K.2: (0008,0005) \ISO 2022 IR 58.
    const std::string bytes = "Zhang^XiaoDong=\x1B$)A\xD5\xC5^\x1B$)A\xD0\xA1\xB6\xAB=";
    EXPECT_EQ(toUtf8(bytes, {"", "ISO 2022 IR 58"}), "Zhang^XiaoDong=张^小东=");
}

TEST(ToUtf8, ReadsEverySingleByteSet) {
    // One letter of each set with its place in the code table of ISO 8859-x, JIS X 0201 or TIS 620.
    struct Case {
        const char* set;
        const char* bytes;
        const char* text;
    };
    for (const Case& c :
         {Case{"ISO_IR 100", "\xC4neas", "Äneas"},
          Case{"ISO_IR 101",
               "\xC8"
               "apek",
               "Čapek"},
          Case{"ISO_IR 109",
               "\xA1"
               "al",
               "Ħal"},
          Case{"ISO_IR 110", "\xA6", "Ļ"}, Case{"ISO_IR 144", "\xBB\xEE\xDA", "Люк"},
          Case{"ISO_IR 127", "\xE2\xC8\xC7", "قبا"}, Case{"ISO_IR 126", "\xC4\xE9", "Δι"},
          Case{"ISO_IR 138", "\xF9", "ש"}, Case{"ISO_IR 148", "\xDD", "İ"}, Case{"ISO_IR 203", "\xA4", "€"},
          Case{"ISO_IR 13", "\xD4", "ﾔ"}, Case{"ISO_IR 166", "\xA1", "ก"}})
        EXPECT_EQ(toUtf8(c.bytes, {c.set}), c.text) << c.set;
}

TEST(ToUtf8, SwitchesBetweenSingleByteSetsAndBackAtDelimiters) {
    // The second set is in force from its escape to the next delimiter (PS3.5 6.1.2.5.3).
    EXPECT_EQ(toUtf8("Buc^\x1B-F\xC4\xE9^\xC4", {"ISO 2022 IR 100", "ISO 2022 IR 126"}), "Buc^Δι^Ä");
}

TEST(ToUtf8, MarksWhatHasNoMeaning) {
    EXPECT_EQ(toUtf8("M\xFCller", {}), "M\uFFFDller");
    EXPECT_EQ(toUtf8("M\xFCller", {"ISO_IR 192"}), "M\uFFFDller");
    EXPECT_EQ(toUtf8("\xFC", {"NO SUCH SET"}), "\uFFFD");
    EXPECT_EQ(toUtf8("\x1B$)C\xFB", {"", "ISO 2022 IR 149"}), "\uFFFD");
}

TEST(ToUtf8, LeavesNothingThatCouldSteerATerminal) {
    EXPECT_EQ(toUtf8("A\x1B[2JB\x07", {}).find('\x1B'), std::string::npos);
    EXPECT_EQ(toUtf8("A\nB\x07", {"ISO_IR 192"}), "A B ");
}
