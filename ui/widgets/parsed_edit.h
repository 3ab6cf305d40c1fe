// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/widgets/value_edit.h"

#include <optional>
#include <string>
#include <utility>

namespace rw::ui {

/// A ValueEdit whose value is read by one function and written out by another. `what`: what it is called in a refusal.
template<class Value>
class ParsedEdit : public ValueEdit {
public:
    using Read = Result<Value> (*)(const std::string& typed); ///< trimmed, not blank
    using Write = QString (*)(const Value& value);

    void setValue(const std::optional<Value>& value) {
        setText(value ? m_write(*value) : QString());
    } ///< emits nothing
    /// Missing when blank.
    [[nodiscard]] Result<Value> value() const {
        if (isBlank()) {
            return tl::unexpected<Refusal>(missing());
        }
        return m_read(text().trimmed().toStdString());
    }
    [[nodiscard]] std::optional<Value> readable() const {
        const auto read = value();
        return read ? std::optional<Value>(*read) : std::nullopt;
    }

protected:
    ParsedEdit(std::string what, Read read, Write write, QWidget* parent)
        : ValueEdit(parent)
        , m_what(std::move(what))
        , m_read(read)
        , m_write(write) {}

    [[nodiscard]] std::optional<Refusal> problemWith() const override {
        const auto read = value();
        return read ? std::nullopt : std::optional<Refusal>(read.error());
    }
    [[nodiscard]] Refusal missing() const override { return Refusal(Code::Missing, {{"what", m_what}}); }
    void writeOut() override { setValue(readable()); }

private:
    std::string m_what;
    Read m_read;
    Write m_write;
};

} // namespace rw::ui
