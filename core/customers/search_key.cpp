// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/search_key.h"

#include <QList>
#include <QString>

#include <algorithm>
#include <array>
#include <utility>

namespace rw {

namespace {
// Letters that Unicode does not take apart, and what people type for them on a keyboard that lacks them.
constexpr std::array<std::pair<char16_t, std::u16string_view>, 11> kSpelledOut = {{{u'ß', u"ss"},
                                                                                   {u'æ', u"ae"},
                                                                                   {u'œ', u"oe"},
                                                                                   {u'ø', u"o"},
                                                                                   {u'ł', u"l"},
                                                                                   {u'đ', u"d"},
                                                                                   {u'ð', u"d"},
                                                                                   {u'þ', u"th"},
                                                                                   {u'ħ', u"h"},
                                                                                   {u'ŧ', u"t"},
                                                                                   {u'ı', u"i"}}};

QString withoutAccents(const QString& text) {
    QString kept;
    for (const char32_t letter : text.normalized(QString::NormalizationForm_KD).toUcs4()) {
        const QChar::Category category = QChar::category(letter);
        // Marks above and below letters, and invisible ones (text direction, joiners) that come with pasted
        // text.
        if (category != QChar::Mark_NonSpacing && category != QChar::Other_Format) {
            kept += QChar::fromUcs4(letter);
        }
    }
    return kept;
}
} // namespace

std::string searchKey(std::string_view text) {
    const QString bare =
        withoutAccents(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))).toCaseFolded();
    QString key;
    for (const QChar letter : bare) {
        const auto spelled =
            std::ranges::find(kSpelledOut, letter.unicode(), [](const auto& row) { return row.first; });
        if (spelled == kSpelledOut.end()) {
            key += letter;
        } else {
            key += QStringView(spelled->second);
        }
    }
    return key.simplified().toStdString();
}

std::string digitsOf(std::string_view text) {
    std::string digits;
    for (const char32_t letter : QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).toUcs4()) {
        if (QChar::isDigit(letter)) {
            digits += static_cast<char>('0' + QChar::digitValue(letter));
        }
    }
    return digits;
}

namespace {
constexpr std::size_t kFewestBesideWords = 4; ///< as many as people say when they give the end of their number
}

std::string phoneDigitsOf(std::string_view text) {
    const QString words = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    const bool isNumber = std::ranges::all_of(words, [](const QChar letter) {
        return letter.isDigit() || letter.isSpace() || QStringView(u"+-./()").contains(letter);
    });
    std::string digits = digitsOf(text);
    return isNumber || digits.size() >= kFewestBesideWords ? digits : std::string();
}

} // namespace rw
