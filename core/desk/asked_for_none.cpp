// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/asked_for_none.h"

#include "core/desk/lookups.h"

namespace rw::desk {

Result<StringArticle> askedForNone(Transaction& ledger, const AskedForNone& asked) {
    const auto key = wordsOf("request key", asked.requestKey, kLongestRequestKey);
    if (!key) {
        return tl::unexpected(key.error());
    }
    auto article = articleOf(ledger, asked.article);
    if (!article) {
        return article;
    }
    if (const auto before = ledger.supply().askedForNoneByRequestKey(*key)) {
        if (*before != asked.article) {
            return refuse(Code::ChangedMeanwhile, {{"what", "asked for, had none"}});
        }
        return article;
    }
    ledger.supply().add({*key, asked.article, asked.by});
    return article;
}

} // namespace rw::desk
