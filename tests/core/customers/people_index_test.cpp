// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/people_index.h"

#include "core/customers/one_letter_off.h"
#include "core/customers/search_key.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <string>
#include <vector>

using testing::ElementsAre;
using testing::IsEmpty;

namespace rw {
namespace {

class Shop : public testing::Test {
protected:
    void know(std::int64_t id, const std::string& name, const std::string& phone = {}) {
        std::vector<std::string> digits;
        if (!phone.empty()) {
            digits.push_back(digitsOf(phone));
        }
        index.put(CustomerId::of(id), searchKey(name), digits);
    }
    std::vector<std::int64_t> found(std::string_view text, int atMost = 20) {
        std::vector<std::int64_t> ids;
        for (const CustomerId id : index.find(text, atMost)) {
            ids.push_back(id.value());
        }
        return ids;
    }
    PeopleIndex index;
};

TEST_F(Shop, FindsFragmentsInsideWordsAndListsByName) {
    know(1, "Zoë Ångström");
    know(2, "Angela Storm");
    know(3, "Ánna Zoega");
    EXPECT_THAT(found("oe"), ElementsAre(3, 1));
    EXPECT_THAT(found("strom Z"), ElementsAre(1));
    EXPECT_THAT(found("ang"), ElementsAre(2, 1));
    EXPECT_THAT(found(""), ElementsAre(2, 3, 1));
    EXPECT_THAT(found("", 2), ElementsAre(2, 3));
    EXPECT_THAT(found("", 0), IsEmpty());
    EXPECT_THAT(found("storm oe"), IsEmpty()) << "words of one person, not of several";
}

TEST_F(Shop, FindsDigitsOfEachNumberAndOfNoTwoNumbersTogether) {
    index.put(CustomerId::of(1), "petra lindobi", {"0771123", "445"});
    know(2, "Team 77");
    EXPECT_THAT(found("77 11"), ElementsAre(1));
    EXPECT_THAT(found("1234"), IsEmpty()) << "the end of one and the beginning of the next";
    EXPECT_THAT(found("77"), ElementsAre(1, 2));
    EXPECT_THAT(found("7"), ElementsAre(2)) << "one digit looks in names only";
}

TEST_F(Shop, ForgetsAndRenames) {
    know(1, "Petra Lindobi", "0771");
    know(2, "Dario Penhallow", "0772");
    know(1, "Petra Ferreday", "0773");
    EXPECT_THAT(found("lindobi"), IsEmpty());
    EXPECT_THAT(found("0771"), IsEmpty());
    EXPECT_THAT(found("077"), ElementsAre(2, 1));
    index.drop(CustomerId::of(2));
    EXPECT_THAT(found("077"), ElementsAre(1));
    EXPECT_EQ(index.size(), 1U);
}

TEST_F(Shop, ForgivesOneLetterWhenNobodyIsSpelledLikeThat) {
    know(1, "Petra Lindobi");
    know(2, "Linda Bové");
    EXPECT_THAT(found("lindaby"), IsEmpty()) << "two letters";
    EXPECT_THAT(found("lindabi"), ElementsAre(1));
    EXPECT_THAT(found("petra lndobi"), ElementsAre(1));
    EXPECT_THAT(found("petar"), ElementsAre(1));
    EXPECT_THAT(found("linnd"), ElementsAre(2, 1)) << "one too many, of the beginning of both";
    EXPECT_THAT(found("linda"), ElementsAre(2)) << "somebody is spelled like that";
    EXPECT_THAT(found("lid"), IsEmpty()) << "three letters are anybody's";
    EXPECT_THAT(found("bobe"), ElementsAre(2));
}

TEST_F(Shop, ForgivesNoDigit) {
    know(1, "Petra Lindobi", "07711");
    know(2, "Team 20261");
    EXPECT_THAT(found("07712"), IsEmpty());
    EXPECT_THAT(found("20262"), IsEmpty());
}

TEST_F(Shop, ForgivesALetterOfAnyScript) {
    know(1, "Μαρία Παππά");
    EXPECT_THAT(found("μαρλα"), ElementsAre(1));
    EXPECT_THAT(found("παπλα"), ElementsAre(1));
}

/// The least number of letters to change, leave out, put in or swap: the recurrence of Damerau (CACM 7, 1964), as
/// written down for strings without a letter changed twice.
std::size_t distance(const std::string& one, const std::string& other) {
    std::vector<std::vector<std::size_t>> d(one.size() + 1, std::vector<std::size_t>(other.size() + 1));
    for (std::size_t i = 0; i <= one.size(); ++i) {
        for (std::size_t j = 0; j <= other.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = i + j;
                continue;
            }
            d[i][j] =
                std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1]) {
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
            }
        }
    }
    return d[one.size()][other.size()];
}

std::vector<std::string> everyWord(std::size_t length) {
    std::vector<std::string> words = {""};
    for (std::size_t i = 0; i < length; ++i) {
        std::vector<std::string> longer;
        for (const std::string& word : words) {
            for (const char letter : {'a', 'b', 'c'}) {
                longer.push_back(word + letter);
            }
        }
        words = std::move(longer);
    }
    return words;
}

TEST(OneLetterOff, IsWhatTheDistanceSays) {
    for (const std::string& typed : everyWord(4)) {
        const OneLetterOff word(typed);
        for (std::size_t length = 1; length <= 6; ++length) {
            for (const std::string& name : everyWord(length)) {
                bool expected = false;
                for (std::size_t begin = 0; begin <= name.size(); ++begin) {
                    expected = expected || distance(typed, name.substr(0, begin)) <= 1;
                }
                ASSERT_EQ(word.mayBeIn(name, true), expected) << typed << " in " << name;
                ASSERT_EQ(word.mayBeIn(name, false), expected) << "letter by letter: " << typed << " in " << name;
            }
        }
    }
}

} // namespace
} // namespace rw
