// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_words.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <span>

#include "app/settings/figures.h"
#include "core/listening/headroom.h"
#include "core/listening/wash.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr double kDay = 24.0 * 60.0;
constexpr double kWorthTelling = 0.05;  ///< dB that show in one digit
constexpr std::size_t kHelps = 3;       ///< changes worth a try; the rest does less

QString ears_text(const char* text) { return QCoreApplication::translate("Ears", text); }
QString none() { return QStringLiteral("\u2013"); }

/// A figure stays beside its unit where the line breaks.
QString bound(QString words) {
    static const QRegularExpression kUnit(QStringLiteral("(\\d) (dB|m|%)"));
    return words.replace(kUnit, QStringLiteral("\\1\u00a0\\2"));
}

/// "Wedge 1 61 %, Wedge 2 20 %": the loudspeakers that make a tenth or more of the wash.
QString makers(const Show& show, const Listener& place) {
    QStringList parts;
    for (const WashShare& share : wash_shares(show, place.position))
        if (share.share >= 0.1)
            parts.append(
                QStringLiteral("%1 %2 %").arg(name_text(show, share.loudspeaker)).arg(qRound(100.0 * share.share)));
    return parts.join(QStringLiteral(", "));
}

/// "Wedge 1 turned 30° to stage left -1.2 dB, 1 m upstage -0.4 dB"; those that help most, first.
QString what_helps(const Show& show, const Listener& place) {
    auto effects = wash_effects(show, place.position);
    const auto gain = [](const WashEffect& effect) { return std::min(effect.turn_change_db, effect.move_change_db); };
    std::ranges::stable_sort(effects, {}, gain);
    QStringList parts;
    for (const WashEffect& effect : std::span(effects).first(std::min(kHelps, effects.size()))) {
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

/// "97.2 dBA" or "+3.0 dB", by what was wished for.
QString wished_text(WishKind kind, std::optional<double> value) {
    if (kind == WishKind::hear_margin || !value) return db_text(value);
    return ears_text("%1 dBA").arg(decimal_text(*value, 1));
}

QString outcome_words(const Show& show, const WishOutcome& outcome) {
    const auto text = [&](std::optional<double> value) { return wished_text(outcome.wish.kind, value); };
    const QString name = name_text(show, outcome.wish.performer);
    if (outcome.met) return ears_text("%1: %2, then %3.").arg(name, text(outcome.before_db), text(outcome.after_db));
    if (!outcome.after_db) return ears_text("%1: %2").arg(name, qstr(outcome.reason));
    return ears_text("%1: %2, then %3 instead of %4. %5")
        .arg(name, text(outcome.before_db), text(outcome.after_db), text(outcome.wish.value_db), qstr(outcome.reason));
}

/// "Sends in Tessa: Tessa voice 102.0 dB, then 99.5 dB; ..", a line a mix.
QStringList send_lines(const Show& show, const std::vector<SendChange>& changes) {
    QStringList lines;
    for (const Mix& mix : show.mixes) {
        QStringList parts;
        for (const SendChange& change : changes)
            if (change.mix == mix.id)
                parts.append(ears_text("%1 %2 dB, then %3 dB")
                                 .arg(name_text(show, change.input), decimal_text(change.from_db, 1),
                                      decimal_text(change.to_db, 1)));
        if (!parts.isEmpty())
            lines.append(ears_text("Sends in %1: %2.").arg(name_text(show, mix.id), parts.join(QStringLiteral("; "))));
    }
    return lines;
}

/// "Ada -2.0 dB, turns up 4.0 dB".
QString cost_words(const Show& show, const LouderCost& cost) {
    const double lost = cost.hear_margin_change_db.value_or(0.0);
    QStringList parts;
    if (lost < -kWorthTelling) parts.append(db_text(lost));
    if (cost.turned_up_db > kWorthTelling)
        parts.append(ears_text("turns up %1 dB").arg(decimal_text(cost.turned_up_db, 1)));
    if (parts.isEmpty()) return {};
    return QStringLiteral("%1 %2").arg(name_text(show, cost.performer), parts.join(QStringLiteral(", ")));
}

QString louder_line(const Show& show, const Louder& louder) {
    const bool backline = find_by_id(show.backline, louder.source) != nullptr;
    const QString name = name_text(show, louder.source), source = backline ? name : ears_text("Mix %1").arg(name);
    QStringList paid;
    for (const LouderCost& cost : louder.performers)
        if (const QString words = cost_words(show, cost); !words.isEmpty()) paid.append(words);
    if (!louder.settles)
        return ears_text("%1: each answer calls for another, and there is no end. At first: %2.")
            .arg(source, paid.isEmpty() ? none() : paid.join(QStringLiteral("; ")));
    return ears_text("%1: %2. Margin %3, then %4.")
        .arg(source, paid.isEmpty() ? ears_text("nobody has to answer") : paid.join(QStringLiteral("; ")),
             margin_text(louder.margin_before_db), margin_text(louder.margin_after_db));
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
    return std::abs(*gain) < kWorthTelling ? ears_text("%1 dB").arg(decimal_text(0.0, 1)) : gain_text(*gain);
}

QString minutes_text(std::optional<double> minutes) {
    if (!minutes) return none();
    if (*minutes > kDay) return ears_text("over 24 h");
    if (*minutes >= 120.0) return ears_text("%1 h").arg(number_text(*minutes / 60.0, 1));
    return *minutes < 1.0 ? ears_text("under 1 min") : ears_text("%1 min").arg(number_text(*minutes, 0));
}

QString solution_words(const Show& show, const SendSolution& solution) {
    QStringList lines;
    for (const WishOutcome& outcome : solution.outcomes) lines.append(outcome_words(show, outcome));
    lines.append(margin_line(solution.margin_before_db, solution.margin_after_db));
    return (lines + send_lines(show, solution.changes)).join(u'\n');
}

QString quiet_words(const Show& before, const QuietStage& quiet) {
    if (!quiet.possible) {
        QStringList names;
        for (const std::string& id : quiet.limited_by) names.append(name_text(before, id));
        return ears_text("No levels let everybody hear themselves that well. In each other's way are: %1.")
            .arg(names.join(QStringLiteral(", ")));
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
    if (costs.empty()) return ears_text("Nothing on this stage can get louder.");
    QStringList lines{
        ears_text("If one gets 3 dB louder: what each player's hear margin loses, and how far she turns "
                  "up to hear as before.")};
    std::vector<Louder> dearest = costs;
    std::ranges::stable_sort(dearest, std::ranges::greater{}, &Louder::total_db);
    for (const Louder& louder : dearest) lines.append(louder_line(show, louder));
    return lines.join(u'\n');
}

QList<QStringList> house_rows(const Show& show, const AnalysisResult* result) {
    QList<QStringList> rows;
    for (const Listener& place : show.listeners) {
        const HouseFigure* figure = result ? find_by_id(result->house, place.id) : nullptr;
        rows.append({name_text(show, place.id), figure ? dba_text(figure->wash_dba) : none(),
                     figure ? db_text(figure->against_target_db) : none()});
    }
    return rows;
}

QStringList wash_words(const Show& show) {
    QStringList all;
    for (const Listener& place : show.listeners) {
        const QString who = makers(show, place), helps = what_helps(show, place);
        QStringList parts;
        if (!who.isEmpty()) parts.append(ears_text("%1: made by %2.").arg(name_text(show, place.id), who));
        if (!helps.isEmpty()) parts.append(ears_text("What helps: %1.").arg(helps));
        all.append(parts.isEmpty() ? ears_text("No stage loudspeaker is heard at %1.").arg(name_text(show, place.id))
                                   : bound(parts.join(u' ')));
    }
    return all;
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
