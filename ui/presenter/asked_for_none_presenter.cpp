// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/asked_for_none_presenter.h"

#include "core/desk/asked_for_none.h"
#include "ui/presenter/request_key.h"

namespace rw::ui {

AskedForNonePresenter::AskedForNonePresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent)
    , m_requestKey(newRequestKey()) {}

void AskedForNonePresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::shelf(ledger); },
         [this](Result<std::vector<desk::ShelfString>> strings) {
             if (strings) {
                 m_strings = *std::move(strings);
                 std::erase_if(m_strings, [](const desk::ShelfString& string) { return string.article.retired; });
                 Q_EMIT stringsChanged();
             }
         });
}

void AskedForNonePresenter::begin() { m_requestKey = newRequestKey(); }

void AskedForNonePresenter::writeDown(StringArticleId string) {
    if (!mayAct()) {
        return;
    }
    const desk::AskedForNone asked{m_requestKey, string, by()};
    writeOnce([asked](desk::Transaction& ledger) { return desk::askedForNone(ledger, asked); },
              [this](const StringArticle& done) { Q_EMIT wroteDown(done); },
              [this](const Refusal& why) { Q_EMIT refused(why); });
}

} // namespace rw::ui
