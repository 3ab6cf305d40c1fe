// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/tagged_job.h"
#include "ui/presenter/pause.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <string>
#include <vector>

namespace rw::ui {

/// Who stands at the counter: found by a piece of a name or a number, by the tag of a racket, or added.
class PersonPresenter final : public StationPresenter {
    Q_OBJECT

public:
    PersonPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause = kTypingPause,
                    QObject* parent = nullptr);

    void refresh() override; ///< the picked person's rackets and jobs again

    void setText(const QString& text);
    void hurry(); ///< the text is complete: looks for it at once
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] const std::vector<desk::PersonFound>& found() const { return m_found; }
    /// The job whose number was typed, or scanned off its tag.
    [[nodiscard]] const std::optional<desk::TaggedJob>& tagged() const { return m_tagged; }
    /// An answer has come for the text as it stands.
    [[nodiscard]] bool isSearched() const { return m_searched; }

    void pick(const desk::PersonFound& person);                  ///< who is not known whole is looked up first
    [[nodiscard]] bool isPicking() const { return m_isPicking; } ///< somebody is looked up
    void clear();
    [[nodiscard]] const std::optional<desk::PersonFound>& picked() const { return m_picked; }
    /// What of theirs is in the shop now: logged, on a machine, waiting or on the rack.
    [[nodiscard]] const std::vector<desk::HistoryEntry>& inTheShop() const { return m_inTheShop; }

    /// What they owe for what has left the shop, negative in their favour; nothing while nobody is picked or heard of.
    [[nodiscard]] const std::optional<Money>& account() const { return m_account; }

    /// What the text starts a new person with: digits are a phone number, words a name.
    [[nodiscard]] Customer newPersonFromText() const;
    /// Adds and picks. Pressing again while it is on its way, or after its answer was lost, adds nobody twice.
    void add(const Customer& customer);
    /// Erases who is picked, on their request; nobody is picked then.
    void remove();

Q_SIGNALS:
    void foundChanged();
    void pickedChanged();
    void inTheShopChanged(); ///< or what is owed
    void addRefused(const Refusal& why);
    void removed(const QString& name);
    void removeRefused(const Refusal& why);

private:
    void search();
    void lookUp(CustomerId id); ///< and pick
    void stopPicking();
    void forgetFound();
    void loadInTheShop();

    Pause m_pause;
    QString m_text;
    std::string m_requestKey; ///< of whoever is added next; kept until it is known what became of it
    bool m_searched = false;
    bool m_adding = false;
    bool m_removing = false;
    desk::CancelToken m_search;
    desk::CancelToken m_picking;
    bool m_isPicking = false;
    std::vector<desk::PersonFound> m_found;
    std::optional<desk::TaggedJob> m_tagged;
    std::optional<desk::PersonFound> m_picked;
    std::vector<desk::HistoryEntry> m_inTheShop;
    std::optional<Money> m_account;
};

} // namespace rw::ui
