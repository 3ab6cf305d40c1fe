// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/sold_string.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class LengthEdit;
class MoneyEdit;
class ThicknessEdit;
class WeightEdit;

/// A string of the shop, new or changed: its code and name, what it is, what a bed of it costs, what a packet
/// of it holds and costs where it comes in packets.
class StringStrip final : public QWidget {
    Q_OBJECT

public:
    explicit StringStrip(QWidget* parent = nullptr);

    /// For a string that the shop has not sold before, most likely of this sport.
    void startNew(Sport sport, const Currency& currency);
    /// For one that it sells; its code stays.
    void startWith(const desk::SoldString& string, const Currency& currency);
    /// Shows what cannot be read, with the keyboard on it; nothing then. Its article has an id when it is not new.
    std::optional<desk::SoldString> string();
    void showRefusal(const Refusal& why);

    [[nodiscard]] QLineEdit* code() const { return m_code; }
    [[nodiscard]] QLineEdit* nameEdit() const { return m_name; }
    [[nodiscard]] LengthEdit* packet() const { return m_packet; }

private:
    void fill(const StringArticle& article);
    void setPrices(const desk::SoldString& string, const Currency& currency);
    void clearNotes();
    /// Says beside the gauge which one it is when nobody writes it.
    void proposeGauge();

    std::optional<StringArticle> m_changed; ///< as it was
    Sheet* m_sheet;
    QLineEdit* m_code;
    QLineEdit* m_name;
    QLineEdit* m_colour;
    QComboBox* m_sport;
    QComboBox* m_material;
    ThicknessEdit* m_thickness;
    MoneyEdit* m_fullBed;
    MoneyEdit* m_halfBed;
    LengthEdit* m_packet;
    MoneyEdit* m_packetPrice;
    QLineEdit* m_gauge;
    WeightEdit* m_weight;
    Sheet::Line m_nameLine{};
    Sheet::Line m_kindLine{};
    Sheet::Line m_priceLine{};
    Sheet::Line m_packetLine{};
    Sheet::Line m_gaugeLine{};
};

} // namespace rw::ui
