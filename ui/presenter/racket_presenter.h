// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/presenter/pause.h"
#include "ui/presenter/station_presenter.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace rw::ui {

/// Something that may be picked as the racket on the counter.
struct RacketChoice {
    std::optional<desk::RacketSummary> own; ///< one of the person's rackets
    FrameModel frame;                       ///< else a frame the shop knows, to be added for them
};

/// Which racket is on the counter: one of the person's own, another of a known frame, or a frame nobody has heard of.
class RacketPresenter final : public StationPresenter {
    Q_OBJECT

public:
    RacketPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause = kTypingPause,
                    QObject* parent = nullptr);

    void refresh() override {}

    /// Nothing: nobody is picked. A person's only racket is picked at once.
    void setPerson(const std::optional<desk::PersonFound>& person);
    [[nodiscard]] const std::optional<desk::PersonFound>& person() const { return m_person; }

    void setText(const QString& text);
    void hurry(); ///< the text is complete: looks for it at once
    [[nodiscard]] const QString& text() const { return m_text; }
    /// The person's rackets that match the text, then frames that the shop knows.
    [[nodiscard]] const std::vector<RacketChoice>& choices() const { return m_choices; }

    /// The frames that the shop knows have been looked through for the text as it stands.
    [[nodiscard]] bool isSearched() const { return m_searched; }

    void pick(const RacketChoice& choice); ///< a known frame is added for the person under the next free mark
    void clear();
    [[nodiscard]] const std::optional<desk::RacketSummary>& picked() const { return m_picked; }

    /// "A", "B", … : the first that none of the person's rackets of this name bears.
    [[nodiscard]] std::string nextMark(const std::string& frameName) const;
    /// Adds the frame and the racket together, and picks it.
    void addNew(const FrameModel& frame, const std::string& mark);

Q_SIGNALS:
    void choicesChanged();
    void pickedChanged();
    void addRefused(const Refusal& why);

private:
    void search();
    void matchOwn();
    void addRacket(const std::variant<FrameModelId, FrameModel>& frame, const std::string& mark);

    Pause m_pause;
    QString m_text;
    std::string m_requestKey; ///< of the racket that is added next; kept until it is known what became of it
    bool m_searched = true;
    bool m_adding = false;
    desk::CancelToken m_search;
    std::optional<desk::PersonFound> m_person;
    std::vector<RacketChoice> m_choices;
    std::optional<desk::RacketSummary> m_picked;
};

} // namespace rw::ui
