// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/tagged_job.h"
#include "ui/port/desk_runner.h"
#include "ui/presenter/history_presenter.h"
#include "ui/widgets/station.h"

#include <chrono>
#include <memory>

class QStackedWidget;

namespace rw::ui {

class AskedForNonePresenter;
class IntakePresenter;
class IntakeSheet;
class NoneSheet;
class PersonPresenter;
class RackPresenter;
class RackSheet;
class RacketPresenter;
class Shift;
class ToBeStrungPresenter;
class ToBeStrungSheet;

/// Counter: a racket comes in, a racket goes home.
class CounterStation final : public Station {
    Q_OBJECT

public:
    CounterStation(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QWidget* parent = nullptr);
    ~CounterStation() override;

    [[nodiscard]] QString name() const override { return tr("Counter"); }
    [[nodiscard]] QString menuName() const override { return tr("Co&unter"); }
    [[nodiscard]] QString guidePage() const override { return QStringLiteral("counter"); }
    void enter() override;
    void refresh() override;
    [[nodiscard]] std::optional<JobId> paperJob() const override; ///< chosen in a list, else logged last

    [[nodiscard]] IntakeSheet* intake() const { return m_intakeSheet; }
    [[nodiscard]] RackSheet* rack() const { return m_rackSheet; }
    [[nodiscard]] PersonPresenter& person() const { return *m_person; }
    [[nodiscard]] RacketPresenter& racket() const { return *m_racket; }
    [[nodiscard]] IntakePresenter& intakePresenter() const { return *m_intake; }
    [[nodiscard]] RackPresenter& rackPresenter() const { return *m_rack; }
    [[nodiscard]] ToBeStrungSheet* toBeStrung() const { return m_toBeStrungSheet; }
    [[nodiscard]] NoneSheet* askedForNone() const { return m_noneSheet; }

    void openTag(const desk::TaggedJob& tagged);
    void showRack();
    void showUnpaid();
    void showToBeStrung();
    void showAskedForNone(); ///< with the string that is chosen on the intake sheet
    void showIntake();

Q_SIGNALS:
    void historyWanted(const rw::ui::HistoryOf& of);

private:
    enum Page { Intake, Rack, ToBeStrung, AskedForNone }; ///< in the order of the stack
    void showPage(Page page);
    void makeKeys();
    void wantHistory(bool ofRacket);
    [[nodiscard]] std::optional<CustomerId> pickedPerson() const;
    [[nodiscard]] const desk::JobLine* chosenLine() const; ///< in the list that is shown

    Shift& m_shift;
    std::unique_ptr<PersonPresenter> m_person;
    std::unique_ptr<RacketPresenter> m_racket;
    std::unique_ptr<IntakePresenter> m_intake;
    std::unique_ptr<RackPresenter> m_rack;
    std::unique_ptr<ToBeStrungPresenter> m_toBeStrung;
    std::unique_ptr<AskedForNonePresenter> m_askedForNone;
    QStackedWidget* m_pages;
    std::optional<JobId> m_logged; ///< here, last
    QList<QAction*> m_intakeKeys;  ///< that mean nothing on another page
    QList<QAction*> m_rackKeys;
    IntakeSheet* m_intakeSheet;
    RackSheet* m_rackSheet;
    ToBeStrungSheet* m_toBeStrungSheet;
    NoneSheet* m_noneSheet;
};

} // namespace rw::ui
