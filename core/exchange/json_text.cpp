// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_text.h"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>

namespace rw::exchange {

namespace {
std::string formatted(double value, std::chars_format format, int precision) {
    assert(std::isfinite(value)); // JSON has no word for anything else
    std::array<char, 400> room{};
    const auto end = std::to_chars(room.data(), room.data() + room.size(), value, format, precision);
    return {room.data(), end.ptr};
}

std::string quoted(std::string_view utf8) {
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string text = "\"";
    for (const char c : utf8) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            text += '\\';
            text += c;
        } else if (code < 0x20) {
            text += "\\u00";
            text += kHex[code >> 4U];
            text += kHex[code & 0xFU];
        } else {
            text += c;
        }
    }
    return text + '"';
}
} // namespace

JsonText& JsonText::beginObject(Shape shape) {
    begin('{', shape);
    return *this;
}

JsonText& JsonText::endObject() {
    end('}');
    return *this;
}

JsonText& JsonText::beginList(Shape shape) {
    begin('[', shape);
    return *this;
}

JsonText& JsonText::endList() {
    end(']');
    return *this;
}

JsonText& JsonText::key(std::string_view name) {
    beforeValue();
    m_text += quoted(name) + ": ";
    m_afterKey = true;
    return *this;
}

JsonText& JsonText::text(std::string_view utf8) {
    beforeValue();
    m_text += quoted(utf8);
    return *this;
}

JsonText& JsonText::yesNo(bool value) {
    beforeValue();
    m_text += value ? "true" : "false";
    return *this;
}

JsonText& JsonText::nothing() {
    beforeValue();
    m_text += "null";
    return *this;
}

JsonText& JsonText::whole(std::int64_t value) {
    beforeValue();
    m_text += std::to_string(value);
    return *this;
}

JsonText& JsonText::thousandths(double value) {
    beforeValue();
    m_text += formatted(value, std::chars_format::fixed, 3);
    return *this;
}

JsonText& JsonText::number(double value) {
    constexpr int kDigits = 9;
    beforeValue();
    m_text += formatted(value, std::chars_format::general, kDigits);
    return *this;
}

std::string JsonText::result() const {
    assert(m_levels.empty());
    return m_text + '\n';
}

void JsonText::beforeValue() {
    if (m_afterKey) {
        m_afterKey = false;
        return;
    }
    if (m_levels.empty()) {
        return;
    }
    Level& level = m_levels.back();
    if (!level.empty) {
        m_text += level.shape == Shape::Line ? ", " : ",";
    }
    if (level.shape == Shape::Block) {
        newLine();
    }
    level.empty = false;
}

void JsonText::begin(char bracket, Shape shape) {
    beforeValue();
    m_text += bracket;
    m_levels.push_back({shape, true});
}

void JsonText::end(char bracket) {
    assert(!m_levels.empty());
    const Level level = m_levels.back();
    m_levels.pop_back();
    if (level.shape == Shape::Block && !level.empty) {
        newLine();
    }
    m_text += bracket;
}

void JsonText::newLine() {
    m_text += '\n';
    m_text.append(2 * m_levels.size(), ' ');
}

} // namespace rw::exchange
