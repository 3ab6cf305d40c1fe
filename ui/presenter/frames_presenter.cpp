// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/frames_presenter.h"

namespace rw::ui {

namespace {
constexpr int kMostShown = 200; ///< more are found by typing
}

FramesPresenter::FramesPresenter(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QObject* parent)
    : SetUpPresenter(runner, shift, parent)
    , m_pause(pause, [this] { load(); }) {}

void FramesPresenter::find(const QString& text) {
    m_typed = text;
    m_pause.again();
}

void FramesPresenter::choose(const std::optional<FrameModelId>& frame) {
    m_wanted = frame;
    m_chosen.reset();
    m_studies = false;
    m_needs.reset();
    load();
}

void FramesPresenter::study(bool wanted) {
    m_studies = wanted;
    m_needs.reset();
    if (wanted) {
        load();
    }
}

void FramesPresenter::load() {
    struct Found {
        std::vector<FrameModel> frames;
        std::optional<desk::KnownFrame> chosen;
        std::optional<desk::FrameNeeds> needs;
    };
    m_asked.cancel();
    m_asked = show(
        [typed = m_typed.toStdString(), wanted = m_wanted, studies = m_studies](desk::Transaction& ledger) -> Result<Found> {
            Found found{ledger.frames().find(typed, kMostShown), std::nullopt, std::nullopt};
            if (wanted) {
                auto known = desk::knownFrame(ledger, *wanted);
                if (!known) {
                    return tl::unexpected<Refusal>(known.error());
                }
                found.chosen = *std::move(known);
            }
            if (wanted && studies) {
                auto needs = desk::frameNeeds(ledger, *wanted);
                if (!needs) {
                    return tl::unexpected<Refusal>(needs.error());
                }
                found.needs = *std::move(needs);
            }
            return found;
        },
        [this](Found found) {
            m_frames = std::move(found.frames);
            m_chosen = std::move(found.chosen);
            m_needs = std::move(found.needs);
        });
}

void FramesPresenter::keep(const FrameModel& frame) {
    act([frame](desk::Transaction& ledger) { return desk::keepFrame(ledger, frame); },
        [this](const FrameModel& done) {
            m_wanted = done.id;
            Q_EMIT kept(done);
        });
}

void FramesPresenter::keepCut(const desk::UsualCut& cut) {
    act([cut](desk::Transaction& ledger) { return desk::keepUsualCut(ledger, cut); },
        [this, cut] { Q_EMIT cutKept(cut); });
}

void FramesPresenter::dropCut(const desk::UsualCut& cut) {
    act([cut](desk::Transaction& ledger) { return desk::dropUsualCut(ledger, cut); }, [this] { Q_EMIT cutDropped(); });
}

} // namespace rw::ui
