// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/frame_needs.h"
#include "core/desk/frames.h"
#include "ui/presenter/pause.h"
#include "ui/presenter/set_up_presenter.h"

#include <QString>

#include <optional>
#include <vector>

namespace rw::ui {

/// The frames that the shop knows: found by typing, and one of them with its usual cuts.
class FramesPresenter final : public SetUpPresenter {
    Q_OBJECT

public:
    FramesPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause = kTypingPause,
                    QObject* parent = nullptr);

    void find(const QString& text); ///< after a pause in typing
    [[nodiscard]] const QString& typed() const { return m_typed; }
    [[nodiscard]] const std::vector<FrameModel>& frames() const { return m_frames; } ///< by name

    void choose(const std::optional<FrameModelId>& frame); ///< nothing: back to the list
    [[nodiscard]] const std::optional<desk::KnownFrame>& chosen() const { return m_chosen; }

    /// Whether the chosen frame's cuts are wanted too. They are read anew with everything else.
    void study(bool wanted);
    [[nodiscard]] const std::optional<desk::FrameNeeds>& needs() const { return m_needs; }

    void keep(const FrameModel& frame); ///< new without an id; it is chosen then
    void keepCut(const desk::UsualCut& cut);
    void dropCut(const desk::UsualCut& cut);

Q_SIGNALS:
    void kept(const rw::FrameModel& frame);
    void cutKept(const rw::desk::UsualCut& cut);
    void cutDropped();

protected:
    void load() override;

private:
    QString m_typed;
    Pause m_pause;
    desk::CancelToken m_asked;
    std::vector<FrameModel> m_frames;
    std::optional<FrameModelId> m_wanted;
    std::optional<desk::KnownFrame> m_chosen;
    bool m_studies = false;
    std::optional<desk::FrameNeeds> m_needs;
};

} // namespace rw::ui
