// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "ui/widgets/sheet.h"

#include <QLineEdit>
#include <QWidget>

#include <optional>
#include <vector>

namespace rw::ui {

class TensionEdit;

/// Saying what was really strung, and, where anybody looked, what came off the ends. It starts with the machine's steps
/// nearest to what was asked.
class FinishStrip final : public QWidget {
    Q_OBJECT

public:
    explicit FinishStrip(QWidget* parent = nullptr);

    void start(const desk::JobCard& card);
    /// Which job it was opened for. Precondition: it was started.
    [[nodiscard]] JobId job() const { return *m_job; }
    /// Shows what cannot be read, with the keyboard on it; asks once about a pair far from what is asked. Nothing then.
    std::optional<TensionPair> strung();
    /// What came off the ends, nothing for a blank line; shows what cannot be read, with the keyboard on it. Nothing
    /// then.
    std::optional<std::vector<TailsOf>> tails();
    [[nodiscard]] QString words() const { return m_words->text(); }
    void showRefusal(const Refusal& why);

    [[nodiscard]] TensionEdit* mains() const { return m_mains; }
    [[nodiscard]] QLineEdit* tailsEdit() const { return m_tails; }

private:
    std::optional<JobId> m_job;
    std::optional<TensionPair> m_asked;
    std::optional<TensionPair> m_askedAbout;
    Sheet* m_sheet;
    TensionEdit* m_mains;
    TensionEdit* m_crosses;
    QLineEdit* m_tails;
    QLineEdit* m_words;
    Sheet::Line m_line{};
    Sheet::Line m_tailsLine{};
    Method m_method = Method::TwoPiece;
    Length m_headLength = Length::fromMillimetres(0);
};

} // namespace rw::ui
