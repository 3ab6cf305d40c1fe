// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/price_lists.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

// What is written on the page of the price lists.
namespace rw::ui {

class DateEdit;
class MoneyEdit;
class PercentEdit;

/// From which day a new list holds.
class NewListSheet final : public QWidget {
    Q_OBJECT

public:
    explicit NewListSheet(QWidget* parent = nullptr);
    void start(CivilDate proposed);
    std::optional<CivilDate> from(); ///< nothing while it cannot be read, with the keyboard on it
    void showRefusal(const Refusal& why);

private:
    Sheet* m_sheet;
    DateEdit* m_date;
    Sheet::Line m_line{};
};

/// One line of a list: labour or rush, of every sport or of one, or an extra with its name.
class PriceLineSheet final : public QWidget {
    Q_OBJECT

public:
    explicit PriceLineSheet(QWidget* parent = nullptr);
    /// A line that is there, or a new one that starts as an extra with the tax of the others.
    void start(const PriceLine& line, bool isNew);
    /// Whether what an extra costs the shop may stand there; what is kept of it stays as it is while it may not.
    void setShowsCost(bool shows);
    std::optional<PriceLine> line(); ///< nothing while something cannot be read, with the keyboard on it
    /// What it is to stand in the place of; nothing for a new one.
    [[nodiscard]] const std::optional<PriceLine>& insteadOf() const { return m_insteadOf; }
    void showRefusal(const Refusal& why);
    [[nodiscard]] QString margin() const;

private:
    void showKind();

    std::optional<PriceLine> m_line; ///< as it was
    std::optional<PriceLine> m_insteadOf;
    bool m_showsCost = false;
    Sheet* m_sheet;
    QComboBox* m_kind;
    QComboBox* m_sport;
    QLineEdit* m_name;
    MoneyEdit* m_cost;
    MoneyEdit* m_amount;
    PercentEdit* m_tax;
    Sheet::Line m_whatLine{};
    Sheet::Line m_nameLine{};
    Sheet::Line m_amountLine{};
};

/// What a bed and a packet of a string cost.
class StringPriceSheet final : public QWidget {
    Q_OBJECT

public:
    explicit StringPriceSheet(QWidget* parent = nullptr);
    void start(const StringArticle& string, const desk::StringPrices& prices, const Currency& currency);
    [[nodiscard]] StringArticleId string() const { return *m_string; }
    std::optional<desk::StringPrices> prices(); ///< nothing while something cannot be read, with the keyboard on it
    void showRefusal(const Refusal& why);

private:
    std::optional<StringArticleId> m_string;
    Sheet* m_sheet;
    MoneyEdit* m_fullBed;
    MoneyEdit* m_halfBed;
    MoneyEdit* m_packet;
    PercentEdit* m_tax;
    Sheet::Line m_bedLine{};
    Sheet::Line m_packetLine{};
};

/// One rate of tax for the whole list, and whether the prices include it.
class TaxSheet final : public QWidget {
    Q_OBJECT

public:
    explicit TaxSheet(QWidget* parent = nullptr);
    void start(const PriceList& list);
    std::optional<int> rate(); ///< nothing while it cannot be read, with the keyboard on it
    [[nodiscard]] TaxRule rule() const;
    void showRefusal(const Refusal& why);

private:
    Sheet* m_sheet;
    PercentEdit* m_rate;
    QComboBox* m_rule;
    Sheet::Line m_line{};
};

} // namespace rw::ui
