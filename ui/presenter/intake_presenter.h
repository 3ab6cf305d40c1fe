// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"
#include "ui/presenter/pause.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace rw::ui {

/// What stands on the intake sheet. A value that cannot be read is nothing here; its editor says why.
struct IntakeForm {
    std::optional<StringArticleId> mains;
    std::optional<StringArticleId> crosses; ///< nothing: the same as the mains
    PieceSource mainsSource = PieceSource::ShopLot;
    PieceSource crossesSource = PieceSource::ShopLot;
    std::optional<LotId> mainsLot; ///< pinned by somebody
    std::optional<LotId> crossesLot;
    std::optional<Length> mainsSetLength; ///< of a customer's own set
    std::optional<Length> crossesSetLength;
    std::optional<Tension> mainsTension;
    std::optional<Tension> crossesTension;
    std::optional<Method> method;
    std::optional<Side> shortSide;
    bool rush = false;
    std::vector<std::pair<std::string, int>> extras;
    QString note;
    bool agreed = false; ///< the customer's informed yes to a pull above the marked maximum, of this job
    QString agreedBy;    ///< "": the customer
    std::optional<Discount> discount; ///< with its reason; without one it does not count yet
    std::optional<Instant> mustBy;
    QString cameWith;
    QString remarks; ///< what was seen when the racket was looked over
};

/// What an intake still lacks before it can be logged.
enum class Lacking { Racket, Strings, Tensions };

/// What was logged, and whose.
struct LoggedIntake {
    Job job;
    Customer customer;
    desk::RacketSummary racket;
    bool notAgreed;      ///< above the marked maximum, and nobody said yes
    bool isOnTheCounter; ///< the sheet still shows this intake; else the next one began before the answer came
};

/// Takes one racket in: shows what follows from what was typed, and logs it once.
class IntakePresenter final : public StationPresenter {
    Q_OBJECT

public:
    IntakePresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause = kTypingPause,
                    QObject* parent = nullptr);

    void refresh() override; ///< the shelf and the preview again

    /// A new racket on the counter: an empty form of its sport. Nothing: the counter is clear.
    void setRacket(const std::optional<desk::RacketSummary>& racket);
    [[nodiscard]] const std::optional<desk::RacketSummary>& racket() const { return m_racket; }

    /// String of the customer's own that is kept here.
    void setOwnLots(const std::vector<Lot>& lots);
    [[nodiscard]] const std::vector<Lot>& ownLots() const { return m_ownLots; }

    /// From the editors; asks for a new preview. A yes is to the tensions that were shown: with others it is taken back.
    void setForm(const IntakeForm& form);
    [[nodiscard]] const IntakeForm& form() const { return m_form; }

    /// Which of the two facts of the last job is repeated.
    enum class Repeat { AsAsked, AsStrung };
    [[nodiscard]] bool canRepeat(Repeat which) const;
    void repeatLast(Repeat which); ///< fills the form; precondition: canRepeat

    /// What one number for mains and crosses means on this racket, by the shop's rule.
    [[nodiscard]] Tension crossesOfOne(const Tension& number) const;
    /// The words that the customer hears before saying yes.
    [[nodiscard]] QString wordsForTheYes() const;

    /// Strings of the racket's sport that are not retired, with what is left of each.
    [[nodiscard]] const std::vector<desk::ShelfString>& strings() const { return m_strings; }

    [[nodiscard]] const std::optional<desk::IntakePreview>& preview() const { return m_preview; }
    [[nodiscard]] const std::optional<Refusal>& refusal() const { return m_refusal; } ///< why there is no preview
    /// The preview belongs to what was typed before the last change.
    [[nodiscard]] bool isThinking() const { return m_thinking; }

    [[nodiscard]] std::vector<Lacking> lacking() const;
    /// Logs what stands there, once however often it is called. Does nothing while something is lacking.
    void log();

    [[nodiscard]] const std::string& requestKey() const { return m_requestKey; }

Q_SIGNALS:
    void formReplaced(); ///< by the presenter: editors take it over
    void stringsChanged();
    void previewChanged();
    void logged(const rw::ui::LoggedIntake& intake);
    void logRefused(const Refusal& why, bool isOnTheCounter); ///< as LoggedIntake::isOnTheCounter

private:
    void startAfresh();
    [[nodiscard]] std::optional<desk::IntakeDraft> draft() const;
    void askPreview();
    void pickStrings();
    /// Where a piece that is strung again comes from: a customer's own reel that is gone, off the shelf.
    [[nodiscard]] PieceSource sourceNow(const JobPiece& piece) const;
    void answered(const std::string& key, Result<LoggedIntake> done);
    void forget(const std::string& key);

    Pause m_pause;
    desk::CancelToken m_asking;
    std::optional<desk::RacketSummary> m_racket;
    IntakeForm m_form;
    std::vector<Lot> m_ownLots;
    std::vector<desk::ShelfString> m_shelf;
    std::vector<desk::ShelfString> m_strings;
    std::optional<desk::IntakePreview> m_preview;
    std::optional<Refusal> m_refusal;
    bool m_thinking = false;
    std::string m_requestKey; ///< of this intake; kept until its job is known to be logged
    std::string m_logging;    ///< the request key that is on its way; "": none
};

} // namespace rw::ui
