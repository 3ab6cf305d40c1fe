// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/desk/shop_facts.h"

#include <QLocale>
#include <QObject>
#include <QString>
#include <QTimeZone>

#include <exception>
#include <optional>
#include <string_view>

namespace rw::ui {

/// Who works at this window, at which machine, and what every station must know of the shop.
class Shift final : public QObject {
    Q_OBJECT

public:
    explicit Shift(const Clock& clock, QObject* parent = nullptr);

    /// Takes over what the ledger says of the shop. Whoever works and whichever machine was chosen stay chosen while
    /// they are still there; else the first machine is, and whoever works here alone. Among several nobody is guessed.
    void setShop(desk::ShopFacts shop);
    [[nodiscard]] bool hasShop() const { return m_shop.has_value(); }
    [[nodiscard]] const desk::ShopFacts& shop() const { return *m_shop; } ///< precondition: hasShop()

    [[nodiscard]] Instant now() const { return m_clock.now(); }
    [[nodiscard]] QTimeZone zone() const;
    [[nodiscard]] OpeningHours hours() const; ///< never open, in UTC, while nothing is known of the shop
    [[nodiscard]] CivilDate today() const { return localDate(hours(), now()); } ///< on the shop's calendar
    [[nodiscard]] QLocale locale() const { return {}; }

    [[nodiscard]] const std::optional<StaffId>& staff() const { return m_staff; }
    void setStaff(StaffId staff);
    [[nodiscard]] const std::optional<MachineId>& machine() const { return m_machine; }
    void setMachine(MachineId machine);

    /// Precondition: somebody works here.
    [[nodiscard]] By by(std::string_view station) const;

    [[nodiscard]] QString staffName(StaffId id) const;     ///< "" when unknown
    [[nodiscard]] QString machineName(MachineId id) const; ///< "" when unknown
    [[nodiscard]] const desk::Machine* machineOf(MachineId id) const;
    [[nodiscard]] const StringArticle* article(StringArticleId id) const;

    /// The unit that a bare number is read in when nothing else says so: that of the shop's first machine.
    [[nodiscard]] TensionUnit usualUnit() const;

    /// What is wrong with the ledger, as a sentence; "" while all is well. There is one ledger, so whoever hears from
    /// it speaks for all.
    [[nodiscard]] const QString& trouble() const { return m_trouble; }
    /// It did not answer what it was asked, or is gone; somebody must ask again until it does.
    [[nodiscard]] bool isCutOff() const { return m_cutOff; }
    void noteTrouble(desk::Access access, const std::exception_ptr& error);
    /// A ledger that was gone is back with any answer; one that could not write is well when something is written.
    void noteAnswer(desk::Access access);
    void noteChange() { Q_EMIT ledgerChanged(); }

    /// Commands that were given and whose answer has not come yet.
    [[nodiscard]] int underWay() const { return m_underWay; }
    void commandGiven() { ++m_underWay; }
    void commandAnswered(bool written);

Q_SIGNALS:
    void ledgerChanged(); ///< somebody wrote, here or elsewhere, or it is back: what is shown may be old
    void troubleChanged();
    void unanswered();              ///< each time the ledger did not answer
    void staffWanted();             ///< something would be written, and nobody has said who is working
    void allAnswered(bool written); ///< nothing is under way any more; whether all that was is in the ledger now
    void shopChanged();
    void staffChanged();
    void machineChanged();

private:
    const Clock& m_clock;
    std::optional<desk::ShopFacts> m_shop;
    std::optional<StaffId> m_staff;
    std::optional<MachineId> m_machine;
    QString m_trouble;
    bool m_cutOff = false;
    int m_underWay = 0;
    bool m_allWritten = true; ///< of what was under way since nothing was
};

} // namespace rw::ui
