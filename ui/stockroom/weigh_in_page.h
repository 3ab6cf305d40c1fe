// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/weigh_in_model.h"
#include "ui/presenter/weigh_in_presenter.h"

#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QWidget>

#include <optional>

namespace rw::ui {

class MarginNote;
class MassEdit;
class Shift;

/// The weigh-in: tag, weight, Enter, and the next one; below, what each of them said, and what that may come from.
class WeighInPage final : public QWidget {
    Q_OBJECT

public:
    explicit WeighInPage(Shift& shift, QWidget* parent = nullptr);

    void start(const QString& tag); ///< the keyboard goes to the tag; with one given, to the weight
    void show(const desk::StockTakeSheet& sheet);
    /// Enter: goes on to the weight where only a tag is typed, and back to the tag from the lines; what is to be
    /// weighed once all is there. Shows what cannot be read.
    [[nodiscard]] std::optional<WeighInPresenter::OnScale> enter();
    void showWeighed(const desk::WeighIn& in); ///< and makes room for the next
    void showRefusal(const Refusal& why);
    /// The line that is looked at.
    [[nodiscard]] const desk::WeighIn* current() const;

    [[nodiscard]] QLineEdit* tag() const { return m_tag; }
    [[nodiscard]] MassEdit* gross() const { return m_gross; }
    [[nodiscard]] MassEdit* empty() const { return m_empty; }
    [[nodiscard]] MassEdit* fresh() const { return m_fresh; }
    [[nodiscard]] QTableView* lines() const { return m_lines; }
    [[nodiscard]] MarginNote* note() const { return m_note; }
    [[nodiscard]] QString progress() const { return m_progress->text(); }
    [[nodiscard]] QString story() const { return m_story->text(); }

Q_SIGNALS:
    void lineChanged(); ///< another line is looked at

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void buildEntry();
    void buildLines();
    void showStory();

    Shift& m_shift;
    WeighInModel m_model;
    std::optional<LotId> m_last;
    QLabel* m_title;
    QLabel* m_progress;
    QLineEdit* m_tag;
    MassEdit* m_gross;
    MassEdit* m_empty;
    MassEdit* m_fresh;
    MarginNote* m_note;
    QTableView* m_lines;
    QLabel* m_story;
    QLabel* m_limits;
};

} // namespace rw::ui
