// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/owner.h"

#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

namespace rw::desk::test {
namespace {

class Owner : public DemoEverywhere {
protected:
    /// As a window does it: the slow half first, then what is written.
    Result<bool> change(std::string_view current, std::optional<std::string> pin) {
        const ChangePin change{std::string(current), std::move(pin)};
        const auto prepared = read([&](Transaction& t) { return preparePin(t, change); });
        if (!prepared) {
            return tl::unexpected(prepared.error());
        }
        if (!*prepared) {
            return false;
        }
        const auto kept = write([&](Transaction& t) { return keepPin(t, **prepared); });
        return kept ? Result<bool>(true) : tl::unexpected(kept.error());
    }
    bool has() {
        return *read([](Transaction& t) { return hasOwnerPin(t); });
    }
    bool opens(std::string_view typed) {
        return *read([&](Transaction& t) { return isOwnerPin(t, typed); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Owner);

TEST_P(Owner, WithoutAPinNothingIsHidden) {
    EXPECT_FALSE(has());
    EXPECT_TRUE(opens(""));
    EXPECT_TRUE(opens("anything"));
}

TEST_P(Owner, APinIsSetChangedAndTakenAwayByWhoKnowsIt) {
    EXPECT_EQ(refusalOf(change("", "123")), Code::ImpossibleValue);
    EXPECT_FALSE(has());
    EXPECT_EQ(change("", "4417"), true);
    EXPECT_TRUE(has());
    EXPECT_TRUE(opens("4417"));
    EXPECT_FALSE(opens("4418"));
    EXPECT_FALSE(opens(""));
    EXPECT_EQ(change("4418", "9999"), false) << "who does not know it changes nothing";
    EXPECT_EQ(change("4418", std::nullopt), false);
    EXPECT_TRUE(opens("4417"));
    EXPECT_EQ(change("4417", "a longer one"), true);
    EXPECT_FALSE(opens("4417"));
    EXPECT_TRUE(opens("a longer one"));
    EXPECT_EQ(change("a longer one", std::nullopt), true);
    EXPECT_FALSE(has());
}

TEST_P(Owner, OfTwoWhoChangeItTheSecondIsTold) {
    const ChangePin mine{"", "4417"};
    const auto prepared = read([&](Transaction& t) { return preparePin(t, mine); });
    ASSERT_TRUE(prepared && *prepared);
    EXPECT_EQ(change("", "9999"), true);
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return keepPin(t, **prepared); })), Code::ChangedMeanwhile);
    EXPECT_TRUE(opens("9999"));
}

TEST_P(Owner, ThePinItselfIsKeptNowhere) {
    ASSERT_EQ(change("", "4417 is mine"), true);
    const auto kept = look([](Transaction& t) { return t.shop().setting(setting::kOwnerPin); });
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->find("4417 is mine"), std::string::npos);
}

/// The tables that go out, on the engines that keep some.
class OwnersTables : public Owner {
protected:
    std::vector<LedgerTable> tables(bool forOwner) {
        return *read([&](Transaction& t) { return everything(t, forOwner); });
    }
    static std::vector<std::string> columnsOf(const std::vector<LedgerTable>& tables, std::string_view name) {
        std::vector<std::string> names;
        for (const Column& column : std::ranges::find(tables, name, &LedgerTable::name)->columns) {
            names.push_back(column.name);
        }
        return names;
    }
};
INSTANTIATE_TEST_SUITE_P(Kept, OwnersTables, testing::Values(Keeping::Sqlite, Keeping::Postgres), keepingName);

TEST_P(OwnersTables, LeaveOutWhatTheShopPaid) {
    const auto all = tables(true);
    const auto shown = tables(false);
    const auto isThere = [](const std::vector<std::string>& columns, std::string_view name) {
        return std::ranges::find(columns, name) != columns.end();
    };
    for (const auto& [table, column] : {std::pair("lots", "price"), {"lots", "shipping"}, {"charges", "cost"}}) {
        EXPECT_TRUE(isThere(columnsOf(all, table), column)) << table << '.' << column;
        EXPECT_FALSE(isThere(columnsOf(shown, table), column)) << table << '.' << column;
    }
    EXPECT_TRUE(isThere(columnsOf(shown, "charges"), "amount")) << "what customers pay is no secret";
    for (std::size_t i = 0; i < shown.size(); ++i) {
        EXPECT_EQ(shown[i].rows.size(), all[i].rows.size()) << shown[i].name;
        for (const auto& row : shown[i].rows) {
            ASSERT_EQ(row.size(), shown[i].columns.size()) << shown[i].name;
        }
    }
}

TEST_P(OwnersTables, NeverHoldThePinOrItsHash) {
    ASSERT_EQ(change("", "4417 is mine"), true);
    for (const LedgerTable& table : tables(true)) {
        for (const auto& row : table.rows) {
            for (const Cell& cell : row) {
                const auto* words = std::get_if<std::string>(&cell);
                EXPECT_FALSE(words != nullptr && (words->find("argon2") != std::string::npos ||
                                                  words->find("4417 is mine") != std::string::npos))
                    << table.name;
            }
        }
    }
}

} // namespace
} // namespace rw::desk::test
