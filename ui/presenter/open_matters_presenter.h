// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/books.h"
#include "core/desk/give_back.h"
#include "core/desk/payment.h"
#include "ui/presenter/books_presenter.h"

#include <QString>

#include <string>
#include <vector>

namespace rw::ui {

/// What is still open after a racket was strung: telling its owner, paying, collecting.
class OpenMattersPresenter final : public BooksPresenter {
    Q_OBJECT

public:
    OpenMattersPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    [[nodiscard]] const std::vector<desk::OpenMatter>& matters() const { return m_matters; } ///< oldest strung first
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// Notes that the customer was told: "phone".
    void tell(JobId job, const QString& how);
    struct Payment {
        JobId job;
        Money amount;
        QString way;
        std::string requestKey; ///< of the sheet that was filled in
    };
    void pay(const Payment& payment);
    /// The same amount the other way: money that goes back to the customer.
    void giveBack(const Payment& payment);

Q_SIGNALS:
    void mattersChanged();
    void told(const rw::Job& job);
    void paid(const rw::desk::PaymentTaken& taken);
    void gaveBack(const rw::desk::GivenBack& given);
    void refused(const Refusal& why);

protected:
    void load() override;

private:
    /// Writes once, and tells of a refusal.
    template<class UseCase, class Done>
    void act(UseCase useCase, Done done);

    std::vector<desk::OpenMatter> m_matters;
    bool m_loaded = false;
};

} // namespace rw::ui
