// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "core/desk/give_back.h"
#include "core/desk/payment.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace rw::ui {

/// The rack: finished rackets that wait to be collected, and handing one over.
class RackPresenter final : public StationPresenter {
    Q_OBJECT

public:
    RackPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    /// What is looked at: what hangs on the rack, or money that is open: what went home with something owed, and what
    /// is to be given back.
    enum class Shows { Rack, Unpaid };
    void show(Shows shows);
    [[nodiscard]] Shows shows() const { return m_shows; }

    [[nodiscard]] const std::vector<desk::JobLine>& lines() const {
        return m_shows == Shows::Rack ? m_lines : m_moneyLines;
    }
    [[nodiscard]] const std::vector<desk::UnpaidJob>& unpaid() const { return m_unpaid; }
    [[nodiscard]] const std::vector<desk::ToGiveBack>& toGiveBack() const { return m_toGiveBack; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// Opens one job to be handed over, or its money; its charges and total come with opened(). Of several that were
    /// asked for the last one opens.
    void open(JobId job);
    void close();
    [[nodiscard]] const std::optional<Job>& opened() const { return m_opened; }
    /// Of the opened job; negative: the customer's.
    [[nodiscard]] const std::optional<Money>& owed() const { return m_owed; }

    /// Hands the opened job over. `payment` nothing: not paid yet; `onAccount`: and that was agreed. Pressing twice hands
    /// over once.
    void handOver(const std::optional<Money>& payment, const QString& way, const QString& takenBy,
                  bool onAccount = false);
    /// Money for the opened job, whose racket went home. Pressing twice takes it once.
    void takePayment(const Money& amount, const QString& way);
    /// Money of the opened job that goes back to the customer. Pressing twice gives it once.
    void giveBack(const Money& amount, const QString& way);
    /// Takes back the last hand-over of this window. False when there is none to take back.
    bool bringBack();
    /// Keeps that the customer was told, and how: "phone", "message".
    void tell(JobId job, const QString& how);

Q_SIGNALS:
    void linesChanged();
    void openedChanged();
    void handedOver(const rw::desk::HandedOver& done);
    void paid(const rw::desk::PaymentTaken& taken);
    void gaveBack(const rw::desk::GivenBack& given);
    void broughtBack(const Job& job);
    void told(const Job& job);
    void refused(const Refusal& why); ///< of what is done with the opened job
    void notDone(const Refusal& why); ///< of what is done to one of the list

private:
    desk::CancelToken m_opening;
    Shows m_shows = Shows::Rack;
    std::vector<desk::JobLine> m_lines;
    std::vector<desk::UnpaidJob> m_unpaid;
    std::vector<desk::ToGiveBack> m_toGiveBack;
    std::vector<desk::JobLine> m_moneyLines; ///< of both
    std::string m_requestKey;                ///< of the payment for the opened job
    bool m_loaded = false;
    bool m_handing = false;
    bool m_telling = false;
    std::optional<JobId> m_lastHandedOver; ///< that can be taken back
    std::optional<Job> m_opened;
    std::optional<Money> m_owed;
};

} // namespace rw::ui
