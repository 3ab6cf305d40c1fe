// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/refusal.h"

#include <algorithm>
#include <sstream>

namespace rw {

namespace {
const Argument* find(const std::vector<Argument>& arguments, std::string_view name) {
    const auto found = std::ranges::find_if(arguments, [&](const Argument& a) { return a.name == name; });
    return found == arguments.end() ? nullptr : &*found;
}
} // namespace

std::string Refusal::text(std::string_view name) const {
    const Argument* argument = find(m_arguments, name);
    if (argument == nullptr) {
        return {};
    }
    if (const auto* text = std::get_if<std::string>(&argument->value)) {
        return *text;
    }
    std::ostringstream out;
    out.imbue(std::locale::classic());
    std::visit([&](const auto& value) { out << value; }, argument->value);
    return out.str();
}

std::int64_t Refusal::number(std::string_view name) const {
    const Argument* argument = find(m_arguments, name);
    if (argument == nullptr) {
        return 0;
    }
    const auto* number = std::get_if<std::int64_t>(&argument->value);
    return number == nullptr ? 0 : *number;
}

} // namespace rw
