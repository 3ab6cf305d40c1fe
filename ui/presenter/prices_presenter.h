// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/price_lists.h"
#include "ui/presenter/set_up_presenter.h"

#include <optional>
#include <vector>

namespace rw::ui {

/// A row of a price list: a line of its own, or a string with what its beds and packets cost.
struct PriceRow {
    std::optional<PriceLine> line;
    std::optional<StringArticle> string; ///< where there is no line
    desk::StringPrices prices = {};      ///< of the string
    bool operator==(const PriceRow&) const = default;
};

/// The shop's price lists, and one of them with its rows.
class PricesPresenter final : public SetUpPresenter {
    Q_OBJECT

public:
    PricesPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    [[nodiscard]] const std::vector<desk::DatedPrices>& lists() const { return m_lists; } ///< the last to begin first
    [[nodiscard]] CivilDate today() const { return m_today; }

    void choose(std::optional<std::int64_t> list);         ///< nothing: back to the lists
    [[nodiscard]] const desk::DatedPrices* chosen() const; ///< null while none is
    [[nodiscard]] std::vector<PriceRow> rows() const;      ///< of the chosen one: work, strings by code, extras
    /// The chosen list holds now or later, so that its lines can be changed.
    [[nodiscard]] bool mayChange() const;

    /// A new list with the lines of the one that would hold on that day; it is chosen then.
    void begin(CivilDate from);
    /// `seen`: the list as it stood when somebody began to change it.
    void keepLine(const PriceList& seen, const std::optional<PriceLine>& insteadOf, const PriceLine& line);
    void takeOff(const PriceList& seen, const PriceLine& line);
    void keepString(const PriceList& seen, StringArticleId string, const desk::StringPrices& prices);
    /// The same rate on every line, and how it stands to the prices.
    void keepTax(const PriceList& seen, TaxRule rule, int hundredthsPercent);
    void drop(const PriceList& seen); ///< takes back a list that does not hold yet

Q_SIGNALS:
    void begun(const rw::PriceList& list);
    /// `renewed`: a list that began earlier was left as it was, and this one holds from today.
    void kept(const rw::PriceList& list, bool renewed);
    void dropped();

protected:
    void load() override;

private:
    void change(const PriceList& seen, const PriceList& wanted);
    /// Shows a list that was written, before anything else is read.
    void showWritten(std::vector<desk::DatedPrices> lists, std::int64_t chosen);

    std::vector<desk::DatedPrices> m_lists;
    std::vector<StringArticle> m_strings;
    CivilDate m_today{};
    std::optional<std::int64_t> m_chosen;
};

} // namespace rw::ui
