// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/settings/figures.h"
#include "core/listening/headroom.h"
#include "core/listening/wash.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr double kDay = 24.0 * 60.0;
constexpr double kWorthTelling = 0.05;  ///< dB that show in one digit

QString ears_text(const char* text) { return QCoreApplication::translate("Ears", text); }
QString none() { return QStringLiteral("\u2013"); }

/// "Wedge 1 61 %, Wedge 2 20 %": the loudspeakers that make a tenth or more of the wash.
QString makers(const Show& show, const Listener& place) {
    QStringList parts;
    for (const WashShare& share : wash_shares(show, place.position))
        if (share.share >= 0.1)
            parts.append(
                QStringLiteral("%1 %2 %").arg(name_text(show, share.loudspeaker)).arg(qRound(100.0 * share.share)));
    return parts.join(QStringLiteral(", "));
}

/// "Wedge 1 turned 30° to stage left -1.2 dB, 1 m upstage -0.4 dB".
QString what_helps(const Show& show, const Listener& place) {
    QStringList parts;
    for (const WashEffect& effect : wash_effects(show, place.position)) {
        QStringList changes;
        if (effect.turn_change_db < -kWorthTelling)
            changes.append((effect.turned_deg > 0.0 ? ears_text("turned 30° to stage left %1")
                                                    : ears_text("turned 30° to stage right %1"))
                               .arg(db_text(effect.turn_change_db)));
        if (std::abs(effect.move_change_db) > kWorthTelling)
            changes.append(ears_text("1 m upstage %1").arg(db_text(effect.move_change_db)));
        if (!changes.isEmpty())
            parts.append(
                QStringLiteral("%1 %2").arg(name_text(show, effect.loudspeaker), changes.join(QStringLiteral(", "))));
    }
    return parts.join(QStringLiteral("; "));
}

QString margin_line(std::optional<double> before, std::optional<double> after) {
    return ears_text("Margin as drawn %1, then %2.").arg(margin_text(before), margin_text(after));
}

}  // namespace

QString dba_text(std::optional<double> level) {
    return level ? ears_text("%1 dBA").arg(number_text(*level, 0)) : none();
}

QString db_text(std::optional<double> gain) {
    if (!gain) return none();
    return ears_text("%1%2 dB").arg(*gain > kWorthTelling ? QStringLiteral("+") : QString(), number_text(*gain, 1));
}

QString minutes_text(std::optional<double> minutes) {
    if (!minutes) return none();
    if (*minutes > kDay) return ears_text("over 24 h");
    if (*minutes >= 120.0) return ears_text("%1 h").arg(number_text(*minutes / 60.0, 1));
    return *minutes < 1.0 ? ears_text("under 1 min") : ears_text("%1 min").arg(number_text(*minutes, 0));
}

QString solution_words(const Show& show, const SendSolution& solution) {
    QStringList lines;
    for (const WishOutcome& outcome : solution.outcomes) {
        const QString name = name_text(show, outcome.wish.performer);
        lines.append(
            outcome.met ? ears_text("%1: %2, then %3.").arg(name, db_text(outcome.before_db), db_text(outcome.after_db))
                        : ears_text("%1: %2").arg(name, qstr(outcome.reason)));
    }
    lines.append(margin_line(solution.margin_before_db, solution.margin_after_db));
    return lines.join(u'\n');
}

QString quiet_words(const Show& before, const QuietStage& quiet) {
    if (!quiet.possible) {
        QStringList reasons;
        for (const std::string& reason : quiet.limited_by) reasons.append(qstr(reason));
        return ears_text("No levels let everybody hear themselves: %1").arg(reasons.join(QStringLiteral("; ")));
    }
    QStringList lines{ears_text("%1 sends change.").arg(quiet.changes.size()),
                      margin_line(quiet.margin_before_db, quiet.margin_after_db)};
    for (std::size_t i = 0; i < std::min(quiet.house_before.size(), quiet.house_after.size()); ++i)
        lines.append(ears_text("Wash at %1: %2, then %3.")
                         .arg(name_text(before, quiet.house_before[i].id), dba_text(quiet.house_before[i].wash_dba),
                              dba_text(quiet.house_after[i].wash_dba)));
    for (std::size_t i = 0; i < std::min(quiet.ears_before.size(), quiet.ears_after.size()); ++i)
        lines.append(ears_text("%1: at the ear %2, then %3; hear margin %4, then %5.")
                         .arg(name_text(before, quiet.ears_before[i].id), dba_text(quiet.ears_before[i].ear_dba),
                              dba_text(quiet.ears_after[i].ear_dba), db_text(quiet.ears_before[i].hear_margin_db),
                              db_text(quiet.ears_after[i].hear_margin_db)));
    return lines.join(u'\n');
}

QString louder_words(const Show& show, const std::vector<Louder>& costs) {
    QStringList lines;
    for (const Louder& louder : costs) {
        const auto* backline = find_by_id(show.backline, louder.source);
        const QString source = backline ? qstr(backline->name) : name_text(show, louder.source);
        if (!louder.settles) {
            lines.append(ears_text("%1 up 3 dB: each answer calls for another, and there is no end.").arg(source));
            continue;
        }
        QStringList paid;
        for (const LouderCost& cost : louder.performers)
            if (cost.turned_up_db > kWorthTelling)
                paid.append(
                    ears_text("%1 turns up %2").arg(name_text(show, cost.performer), db_text(cost.turned_up_db)));
        const QString who = paid.isEmpty() ? ears_text("nobody has to answer") : paid.join(QStringLiteral(", "));
        lines.append(ears_text("%1 up 3 dB: %2; margin %3, then %4.")
                         .arg(source, who, margin_text(louder.margin_before_db), margin_text(louder.margin_after_db)));
    }
    return lines.isEmpty() ? ears_text("Nothing on this stage can get louder.") : lines.join(u'\n');
}

QList<QStringList> house_rows(const Show& show, const AnalysisResult* result) {
    QList<QStringList> rows;
    for (const Listener& place : show.listeners) {
        const HouseFigure* figure = result ? find_by_id(result->house, place.id) : nullptr;
        rows.append({name_text(show, place.id), figure ? dba_text(figure->wash_dba) : none(),
                     figure ? db_text(figure->against_target_db) : none(), makers(show, place),
                     what_helps(show, place)});
    }
    return rows;
}

QList<QStringList> load_rows(const Show& show) {
    QList<QStringList> rows;
    for (const LoudspeakerLoad& load : loudspeaker_loads(show)) {
        const Loudspeaker* speaker = find_by_id(show.loudspeakers, load.id);
        rows.append(
            {name_text(show, load.id), load.level_db ? ears_text("%1 dB").arg(number_text(*load.level_db, 0)) : none(),
             speaker && speaker->max_spl_db ? ears_text("%1 dB").arg(number_text(*speaker->max_spl_db, 0)) : none(),
             load.headroom_db ? db_text(load.headroom_db) : none()});
    }
    return rows;
}

QList<QStringList> band_rows(const EarSpectrum& spectrum) {
    const auto level = [](std::optional<double> db) {
        return db ? ears_text("%1 dB").arg(number_text(*db, 0)) : none();
    };
    QList<QStringList> rows;
    for (std::size_t band = 0; band < spectrum.bands.size(); ++band) {
        const BandAtEar& at = spectrum.bands[band];
        if (at.own_db || at.others_db)
            rows.append(
                {band_text(kNominalThirdOctaves[band]), level(at.own_db), level(at.others_db), db_text(at.margin_db)});
    }
    return rows;
}

QString masked_words(const EarSpectrum& spectrum) {
    QStringList sentences;
    for (const MaskedRange& range : spectrum.masked) sentences.append(qstr(range.sentence));
    return sentences.isEmpty() ? ears_text("Nothing of her own that matters is masked.") : sentences.join(u' ');
}

}  // namespace howlmap::app
