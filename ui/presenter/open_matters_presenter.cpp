// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/open_matters_presenter.h"

namespace rw::ui {

OpenMattersPresenter::OpenMattersPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : BooksPresenter(runner, shift, parent) {}

void OpenMattersPresenter::load() {
    read([](desk::Transaction& ledger) { return desk::openMatters(ledger); },
         [this](Result<std::vector<desk::OpenMatter>> matters) {
             if (matters) {
                 m_matters = std::move(*matters);
                 m_loaded = true;
                 Q_EMIT mattersChanged();
             }
         });
}

template<class UseCase, class Done>
void OpenMattersPresenter::act(UseCase useCase, Done done) {
    writeOnce(std::move(useCase), std::move(done), [this](const Refusal& why) { Q_EMIT refused(why); });
}

void OpenMattersPresenter::tell(JobId job, const QString& how) {
    if (!mayAct()) {
        return;
    }
    act([command = desk::TellCustomer{job, how.toStdString(), by()}](
            desk::Transaction& ledger) { return desk::tellCustomer(ledger, command); },
        [this](const Job& done) { Q_EMIT told(done); });
}

void OpenMattersPresenter::pay(const Payment& payment) {
    if (!mayAct()) {
        return;
    }
    act([command = desk::TakePayment{payment.requestKey, payment.job, payment.amount, payment.way.toStdString(), by()}](
            desk::Transaction& ledger) { return desk::takePayment(ledger, command); },
        [this](const desk::PaymentTaken& taken) { Q_EMIT paid(taken); });
}

void OpenMattersPresenter::giveBack(const Payment& payment) {
    if (!mayAct()) {
        return;
    }
    act([command = desk::GiveBack{payment.requestKey, payment.job, payment.amount, payment.way.toStdString(), by()}](
            desk::Transaction& ledger) { return desk::giveBack(ledger, command); },
        [this](const desk::GivenBack& given) { Q_EMIT gaveBack(given); });
}

} // namespace rw::ui
