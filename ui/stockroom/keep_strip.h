// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/people_model.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <memory>
#include <optional>

namespace rw::ui {

class Finder;
class LengthEdit;
class MassEdit;

/// A customer leaves a reel of their own here: whose, which string, how long. It costs the shop nothing.
class KeepStrip final : public QWidget {
    Q_OBJECT

public:
    KeepStrip(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~KeepStrip() override;

    void start(const std::vector<desk::ShelfString>& strings, const std::optional<StringArticleId>& chosen);
    /// Shows what is missing or cannot be read, with the keyboard on it; nothing then.
    std::optional<StockroomPresenter::Receipt> receipt();
    void showRefusal(const Refusal& why);
    [[nodiscard]] QString owner() const; ///< their name; "" while nobody is picked

    [[nodiscard]] Finder* finder() const { return m_finder; }
    [[nodiscard]] QComboBox* strings() const { return m_string; }
    [[nodiscard]] LengthEdit* length() const { return m_length; }

private:
    void connectPeople();

    Shift& m_shift;
    std::unique_ptr<PersonPresenter> m_person;
    PeopleModel m_people;
    std::string m_requestKey;
    Sheet* m_sheet;
    Finder* m_finder;
    QComboBox* m_string;
    QComboBox* m_kind;
    LengthEdit* m_length;
    QLineEdit* m_tag;
    QLineEdit* m_batch;
    MassEdit* m_weight;
    Sheet::Line m_personLine{};
    Sheet::Line m_stringLine{};
    Sheet::Line m_lengthLine{};
};

} // namespace rw::ui
