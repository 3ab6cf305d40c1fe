// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/job_line_model.h"
#include "ui/widgets/typed_tag.h"

#include <QLabel>
#include <QListView>
#include <QWidget>

#include <map>
#include <optional>

namespace rw::ui {

/// Jobs one below the other with a heading and their keys. What Enter acts on is only ever a line that somebody chose:
/// after something was done none is, until an arrow key or a tag's number, typed or scanned, chooses again.
class JobList final : public QWidget {
    Q_OBJECT

public:
    JobList(const QString& title, const QString& keys, QWidget* parent = nullptr);

    /// Begins at the first job of `person`, or at none when nothing of theirs is here. Nobody: at the first job, or at
    /// none where Enter would act on a stranger's.
    enum class WithoutPerson { First, None };
    void begin(const std::optional<CustomerId>& person, WithoutPerson without = WithoutPerson::First);
    void beginAt(JobId job); ///< at this one, or at none when it is not here
    /// The jobs as they are now; who was chosen stays chosen. `whenEmpty` is said instead of an empty list.
    void setLines(const std::vector<desk::JobLine>& lines, Instant now, const QTimeZone& zone, const QString& whenEmpty,
                  std::map<JobId, JobRemark> remarks = {});
    void setTitle(const QString& title, const QString& keys);
    void chooseNone();
    void takeKeyboard(); ///< also while the list is empty, so that the keys around it work

    [[nodiscard]] std::optional<JobId> chosen() const;
    [[nodiscard]] const desk::JobLine* chosenLine() const; ///< nullptr when none is chosen
    [[nodiscard]] QListView* list() const { return m_list; }

Q_SIGNALS:
    void entered(rw::JobId job); ///< Enter, once however long it is held
    void moved();                ///< another job is chosen, or none; not the same one in other lines
    void typed(int key);         ///< a letter, while a line is chosen
    /// A tag's number was typed or scanned, and its job is not in the list; one that is there is chosen.
    void tagNotHere(std::int64_t number);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void enter();
    void chooseTag(std::int64_t number);
    [[nodiscard]] bool takeTag(const QKeyEvent& key);
    void tellOfAMove();
    [[nodiscard]] int rowToBeginWith() const; ///< -1: none

    JobLineModel m_lines;
    std::optional<CustomerId> m_person;
    std::optional<JobId> m_beginJob;
    TypedTag m_tag;
    QString m_keyWords;
    WithoutPerson m_without = WithoutPerson::First;
    std::optional<JobId> m_told; ///< who was chosen when moved() was last sent
    bool m_beginning = false;    ///< nobody has moved since begin()
    QLabel* m_title;
    QLabel* m_keys;
    QLabel* m_empty;
    QListView* m_list;
};

} // namespace rw::ui
