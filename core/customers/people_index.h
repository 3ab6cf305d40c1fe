// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rw {

/// Everybody's name and phone numbers as they are searched, in memory and in the order of a list, so that each letter
/// that is typed is answered at once however many people a shop knows. Holds no contact data beyond the digits.
class PeopleIndex {
public:
    /// Somebody more, of many. Precondition: nothing is held of them.
    void add(CustomerId id, std::string_view searchKey, const std::vector<std::string>& phoneDigits);
    /// One person, in place of what was held of them before.
    void put(CustomerId id, std::string_view searchKey, const std::vector<std::string>& phoneDigits);
    void drop(CustomerId id);
    void clear();
    [[nodiscard]] std::size_t size() const { return m_people.size(); }

    /// Whose name holds every word of `text`, in any order and inside words (searchKey), or one of whose phone numbers
    /// holds its digits (phoneDigitsOf, two or more of them); by name, at most `atMost`. An empty text is everybody.
    ///
    /// When nobody is: whose name would, were one letter of a word another, missing, one too many or swapped with the
    /// next (optimal string alignment distance 1). That goes for words of four letters or more, from the beginning of a
    /// name on: with fewer, or anywhere, nearly everybody would do (common practice).
    [[nodiscard]] std::vector<CustomerId> find(std::string_view text, int atMost);

private:
    struct Person {
        std::int64_t id;
        std::uint32_t from; ///< in m_text: the key, then the digits of each phone after a line end
        std::uint32_t keyLength;
        std::uint32_t digitsLength;
        bool keyIsAscii;
    };
    [[nodiscard]] std::string_view keyOf(const Person& person) const {
        return std::string_view(m_text).substr(person.from, person.keyLength);
    }
    [[nodiscard]] std::string_view phonesOf(const Person& person) const {
        return std::string_view(m_text).substr(person.from + person.keyLength, person.digitsLength);
    }
    [[nodiscard]] bool isBefore(const Person& one, const Person& other) const;
    [[nodiscard]] Person written(CustomerId id, std::string_view searchKey,
                                 const std::vector<std::string>& phoneDigits);
    void sort();

    std::string m_text; ///< where somebody was dropped there are noughts
    std::vector<Person> m_people;
    bool m_sorted = true;
};

} // namespace rw
