// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/people_index.h"

#include "core/customers/one_letter_off.h"
#include "core/customers/search_key.h"

#include <algorithm>
#include <utility>

namespace rw {

namespace {
constexpr std::size_t kFewestDigits = 2; ///< one digit is in nearly every number

/// The words of a search key, the longest first: they rule out most.
std::vector<std::string> wordsIn(std::string key) {
    std::erase(key, '\0'); // no name holds one
    std::vector<std::string> words;
    for (std::size_t from = 0; from < key.size();) {
        const std::size_t to = std::min(key.find(' ', from), key.size());
        words.push_back(key.substr(from, to - from));
        from = to + 1;
    }
    std::ranges::stable_sort(words, std::ranges::greater(), &std::string::size);
    return words;
}

bool holds(std::string_view key, const std::string& word) { return key.find(word) != std::string_view::npos; }
} // namespace

bool PeopleIndex::isBefore(const Person& one, const Person& other) const {
    const auto order = keyOf(one).compare(keyOf(other));
    return order != 0 ? order < 0 : one.id < other.id;
}

PeopleIndex::Person PeopleIndex::written(CustomerId id, std::string_view searchKey,
                                         const std::vector<std::string>& phoneDigits) {
    Person person{id.value(), static_cast<std::uint32_t>(m_text.size()), static_cast<std::uint32_t>(searchKey.size()),
                  0, isAscii(searchKey)};
    m_text += searchKey;
    for (const std::string& digits : phoneDigits) {
        m_text += '\n';
        m_text += digits;
    }
    person.digitsLength = static_cast<std::uint32_t>(m_text.size()) - person.from - person.keyLength;
    return person;
}

void PeopleIndex::add(CustomerId id, std::string_view searchKey, const std::vector<std::string>& phoneDigits) {
    m_people.push_back(written(id, searchKey, phoneDigits));
    m_sorted = false;
}

void PeopleIndex::put(CustomerId id, std::string_view searchKey, const std::vector<std::string>& phoneDigits) {
    drop(id);
    sort();
    const Person person = written(id, searchKey, phoneDigits);
    const auto place = std::ranges::upper_bound(
        m_people, person, [this](const Person& one, const Person& other) { return isBefore(one, other); });
    m_people.insert(place, person);
}

void PeopleIndex::drop(CustomerId id) {
    const auto person = std::ranges::find(m_people, id.value(), &Person::id);
    if (person == m_people.end()) {
        return;
    }
    // Who asked to be removed does not linger in memory.
    std::fill_n(m_text.begin() + person->from, person->keyLength + person->digitsLength, '\0');
    m_people.erase(person);
}

void PeopleIndex::clear() {
    m_text.clear();
    m_people.clear();
    m_sorted = true;
}

void PeopleIndex::sort() {
    if (m_sorted) {
        return;
    }
    std::ranges::sort(m_people, [this](const Person& one, const Person& other) { return isBefore(one, other); });
    // It is read from end to end for each text, which is quicker where it lies in the order of the list.
    std::string text;
    text.reserve(m_text.size());
    for (Person& person : m_people) {
        const auto from = static_cast<std::uint32_t>(text.size());
        text.append(m_text, person.from, person.keyLength + person.digitsLength);
        person.from = from;
    }
    m_text = std::move(text);
    m_sorted = true;
}

std::vector<CustomerId> PeopleIndex::find(std::string_view text, int atMost) {
    sort();
    const std::vector<std::string> words = wordsIn(searchKey(text));
    std::string digits = phoneDigitsOf(text);
    if (digits.size() < kFewestDigits) {
        digits.clear();
    }
    std::vector<CustomerId> found;
    const auto gather = [&](auto fits) {
        for (const Person& person : m_people) {
            if (std::ssize(found) >= atMost) {
                return;
            }
            if (fits(person)) {
                found.push_back(CustomerId::of(person.id));
            }
        }
    };
    gather([&](const Person& person) {
        const std::string_view key = keyOf(person);
        return std::ranges::all_of(words, [&](const std::string& word) { return holds(key, word); }) ||
               (!digits.empty() && holds(phonesOf(person), digits));
    });
    const std::vector<OneLetterOff> nearly(words.begin(), words.end());
    if (found.empty() && std::ranges::any_of(nearly, &OneLetterOff::isForgiven)) {
        const bool oneWord = words.size() == 1; // which nobody's name holds
        gather([&](const Person& person) {
            const std::string_view key = keyOf(person);
            for (std::size_t i = 0; i < words.size(); ++i) {
                if ((oneWord || !holds(key, words[i])) && !nearly[i].mayBeIn(key, person.keyIsAscii)) {
                    return false;
                }
            }
            return true;
        });
    }
    return found;
}

} // namespace rw
