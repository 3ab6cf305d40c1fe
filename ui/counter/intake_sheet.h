// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/opening_hours.h"
#include "core/desk/counter.h"
#include "core/pricing/quote.h"
#include "ui/model/people_model.h"
#include "ui/model/racket_choice_model.h"
#include "ui/widgets/sheet.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QWidget>

#include <optional>

namespace rw::ui {

class DiscountEdit;
class Finder;
class IntakePresenter;
class MomentEdit;
class NewFrameForm;
class NewPersonForm;
class OutcomeStrip;
class PersonPresenter;
class RacketPresenter;
class Shift;
class StringChoice;
class TensionEdit;

/// The one sheet on which a racket is taken in: who, which racket, what string, two tensions, and at the foot what it
/// comes to. The margin says beside each line what follows from it, or what is wrong with it.
class IntakeSheet final : public QWidget {
    Q_OBJECT

public:
    IntakeSheet(PersonPresenter& person, RacketPresenter& racket, IntakePresenter& intake, Shift& shift,
                QWidget* parent = nullptr);

    void enter(); ///< the keyboard where work goes on
    void startAfresh();
    void takeIn(const desk::TaggedJob& tagged); ///< that racket again
    void repeatLast(bool asStrung);
    /// Logs, or shows what is missing and puts the keyboard there.
    void log();

    [[nodiscard]] Finder* personFinder() const { return m_personFinder; }
    [[nodiscard]] Finder* racketFinder() const { return m_racketFinder; }
    [[nodiscard]] NewPersonForm* newPerson() const { return m_newPerson; }
    [[nodiscard]] StringChoice* mains() const { return m_mains; }
    [[nodiscard]] StringChoice* crosses() const { return m_crosses; }
    [[nodiscard]] TensionEdit* mainsTension() const { return m_mainsTension; }
    [[nodiscard]] TensionEdit* crossesTension() const { return m_crossesTension; }
    [[nodiscard]] MomentEdit* mustBy() const { return m_mustBy; }
    [[nodiscard]] DiscountEdit* discount() const { return m_discount; }
    [[nodiscard]] QLineEdit* reason() const { return m_reason; }
    [[nodiscard]] MarginNote* termsNote() const { return m_termsLine.note; }
    [[nodiscard]] QLineEdit* cameWith() const { return m_cameWith; }
    [[nodiscard]] QLineEdit* remarks() const { return m_remarks; }
    [[nodiscard]] QLineEdit* note() const { return m_note; }
    [[nodiscard]] OutcomeStrip* outcome() const { return m_outcome; }
    /// The margin of a line, for whoever wants to read it.
    [[nodiscard]] MarginNote* personNote() const { return m_personLine.note; }
    [[nodiscard]] MarginNote* racketNote() const { return m_racketLine.note; }
    [[nodiscard]] MarginNote* mainsNote() const { return m_mainsLine.note; }
    [[nodiscard]] MarginNote* tensionNote() const { return m_tensionLine.note; }
    [[nodiscard]] MarginNote* methodNote() const { return m_methodLine.note; }
    [[nodiscard]] QCheckBox* agreed() const { return m_agreed; }
    [[nodiscard]] QLineEdit* agreedBy() const { return m_agreedBy; }
    [[nodiscard]] MarginNote* agreedNote() const { return m_agreedLine.note; }
    [[nodiscard]] QPushButton* removeButton() const { return m_remove; }
    /// Asks whether the picked person is to be removed; says so when nobody is picked.
    void askRemoval();

Q_SIGNALS:
    void tagPicked(const rw::desk::TaggedJob& tagged); ///< instead of a person

protected:
    void keyPressEvent(QKeyEvent* event) override; ///< Enter goes on to the next field, and logs in the last

private:
    void build();
    void connectPerson();
    void connectRacket();
    void connectForm();
    void orderTabs();
    void fillExtras();
    void showExtras(); ///< what the form holds of them
    void pickHighlighted();
    void showNote();

    void personPicked();
    void showInTheShop();
    void racketPicked();
    void showNewPerson(bool shown);
    void showNewFrame(bool shown);
    void takeOverForm(); ///< from the presenter into the editors
    void formEdited();   ///< from the editors into the presenter
    void showStock();
    void showOwnSets();
    void showPreview();
    void showNeeded();
    void showTensions();
    void showAgreed();
    void showTerms();
    void showInspection();
    [[nodiscard]] std::optional<Discount> typedDiscount() const;
    [[nodiscard]] bool isComplete(); ///< else what is wrong is shown, and the keyboard is there
    void showRemoval(bool shown);
    void showShortSide();
    void showLastTime(const desk::RacketSummary& racket);
    [[nodiscard]] QString racketTitle() const;

    PersonPresenter& m_person;
    RacketPresenter& m_racket;
    IntakePresenter& m_intake;
    Shift& m_shift;

    PeopleModel m_people;
    RacketChoiceModel m_rackets;

    Sheet* m_sheet;
    Finder* m_personFinder;
    NewPersonForm* m_newPerson;
    QPushButton* m_remove;
    Finder* m_racketFinder;
    NewFrameForm* m_newFrame;
    StringChoice* m_mains;
    StringChoice* m_crosses;
    TensionEdit* m_mainsTension;
    TensionEdit* m_crossesTension;
    QCheckBox* m_agreed;
    QLineEdit* m_agreedBy;
    QComboBox* m_method;
    QComboBox* m_side;
    QCheckBox* m_rush;
    QList<QSpinBox*> m_extras; ///< one for each extra of the price list
    QWidget* m_extrasRow;
    MomentEdit* m_mustBy;
    DiscountEdit* m_discount;
    QLineEdit* m_reason;
    QLineEdit* m_cameWith;
    QLineEdit* m_remarks;
    QLineEdit* m_note;
    OutcomeStrip* m_outcome;
    Sheet::Line m_personLine{};
    Sheet::Line m_newPersonLine{};
    Sheet::Line m_removeLine{};
    Sheet::Line m_racketLine{};
    Sheet::Line m_newFrameLine{};
    Sheet::Line m_mainsLine{};
    Sheet::Line m_crossesLine{};
    Sheet::Line m_tensionLine{};
    Sheet::Line m_agreedLine{};
    Sheet::Line m_methodLine{};
    Sheet::Line m_termsLine{};
    Sheet::Line m_inspectionLine{};
    Sheet::Line m_noteLine{};
    std::optional<bool> m_repeatWhenPicked; ///< as strung or as asked: pressed while the person was looked up
    std::optional<RacketId> m_saidToBeHere; ///< whoever logs it now knows that it is in the shop
    bool m_filling = false;
};

} // namespace rw::ui
