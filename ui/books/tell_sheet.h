// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QWidget>

#include <optional>

namespace rw::ui {

/// How a customer was told that a racket is ready.
class TellSheet final : public QWidget {
    Q_OBJECT

public:
    explicit TellSheet(QWidget* parent = nullptr);

    void start(const desk::OpenMatter& matter);
    [[nodiscard]] JobId job() const { return *m_job; } ///< precondition: it was started
    [[nodiscard]] QString how() const;                 ///< as it is kept: "phone"
    void showRefusal(const Refusal& why);

private:
    std::optional<JobId> m_job;
    Sheet* m_sheet;
    QComboBox* m_how;
    Sheet::Line m_line{};
};

} // namespace rw::ui
