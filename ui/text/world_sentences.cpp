// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/sentences.h"

#include "core/base/world_error.h"
#include "ui/text/format.h"

#include <QCoreApplication>

#include <cassert>
#include <new>

namespace rw::ui {

namespace {
struct WorldSentences {
    Q_DECLARE_TR_FUNCTIONS(WorldSentences)
};

/// The sentence, with the engine's own words behind it for whoever is asked for help.
QString withDetail(const QString& sentence, const std::exception& error) {
    QString detail = fromUtf8(error.what()).simplified();
    while (detail.endsWith(QLatin1Char('.'))) {
        detail.chop(1);
    }
    return detail.isEmpty() ? sentence : WorldSentences::tr("%1 (%2)").arg(sentence, detail);
}
} // namespace

QString sentenceFor(const std::exception_ptr& error) {
    assert(error);
    try {
        std::rethrow_exception(error);
    } catch (const Cancelled&) {
        return WorldSentences::tr("Stopped as asked; nothing was changed.");
    } catch (const LedgerFull& e) {
        return withDetail(WorldSentences::tr("There is no room left for the ledger; nothing of this was kept. "
                                             "Make room and do it again."),
                          e);
    } catch (const LedgerLost& e) {
        return withDetail(WorldSentences::tr("The ledger cannot be reached any more; look whether the last change "
                                             "is in it before doing it again."),
                          e);
    } catch (const LedgerCorrupt& e) {
        return withDetail(WorldSentences::tr("The ledger contradicts itself; nothing of this was kept. "
                                             "Run a check and work from a copy."),
                          e);
    } catch (const LedgerReadOnly& e) {
        return withDetail(WorldSentences::tr("This user may not write to the ledger; nothing of this was kept."), e);
    } catch (const LedgerBusy& e) {
        return withDetail(WorldSentences::tr("Another station holds the ledger; nothing of this was kept. "
                                             "Try it again in a moment."),
                          e);
    } catch (const LedgerGuard& e) {
        return withDetail(
            WorldSentences::tr("The ledger refused this to keep its books right; nothing of it was kept."), e);
    } catch (const FileLost& e) {
        return withDetail(WorldSentences::tr("The file could not be written, and nothing of it was kept. "
                                             "Make room and do it again."),
                          e);
    } catch (const std::bad_alloc&) {
        return WorldSentences::tr("This computer has no memory left for this; nothing of it was kept.");
    } catch (const std::exception& e) {
        return withDetail(WorldSentences::tr("Something happened that the program does not know; "
                                             "nothing of this was kept."),
                          e);
    } catch (...) {
        return WorldSentences::tr("Something happened that the program does not know; nothing of this was kept.");
    }
}

} // namespace rw::ui
