// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rw::exchange {

/// Writes JSON text in the order in which it is told, so that two equal plans are two equal files. Indented by two
/// blanks; an object or list begun as `Line` stands on one line.
class JsonText {
public:
    enum class Shape { Block, Line };

    JsonText& beginObject(Shape shape = Shape::Block);
    JsonText& endObject();
    JsonText& beginList(Shape shape = Shape::Block);
    JsonText& endList();

    JsonText& key(std::string_view name);
    JsonText& text(std::string_view utf8);
    JsonText& yesNo(bool value);
    JsonText& nothing(); ///< null
    JsonText& whole(std::int64_t value);
    /// Three decimals: millimetres to the thousandth.
    JsonText& thousandths(double value);
    /// Nine significant digits, no trailing noughts: shares, chances, exponents.
    JsonText& number(double value);

    /// What was written, with a line feed at the end. Everything begun must have ended.
    [[nodiscard]] std::string result() const;

private:
    struct Level {
        Shape shape;
        bool empty;
    };

    void beforeValue();
    void begin(char bracket, Shape shape);
    void end(char bracket);
    void newLine();

    std::string m_text;
    std::vector<Level> m_levels;
    bool m_afterKey = false;
};

} // namespace rw::exchange
