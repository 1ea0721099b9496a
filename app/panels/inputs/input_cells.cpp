// SPDX-License-Identifier: GPL-3.0-or-later
// Reading and writing single cells of the input list as text.
#include <QCoreApplication>

#include "app/panels/inputs/inputs_model.h"
#include "app/settings/figures.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/show/transducers.h"

namespace howlmap::app {
namespace {

QString input_text(const char* text) { return QCoreApplication::translate("Inputs", text); }
QString yes_no(bool value) { return value ? input_text("yes") : QString(); }

QString read_flag(const QString& text, bool& flag) {
    const QString word = text.trimmed().toLower();
    static const QStringList yes{QStringLiteral("yes"),  QStringLiteral("y"), QStringLiteral("x"), QStringLiteral("1"),
                                 QStringLiteral("true"), QStringLiteral("+"), QStringLiteral("ja")};
    static const QStringList no{
        QString(),           QStringLiteral("no"),  QStringLiteral("n"), QStringLiteral("0"), QStringLiteral("false"),
        QStringLiteral("-"), QStringLiteral("nein")};
    if (!yes.contains(word) && !no.contains(word)) return input_text("\"%1\": expected yes or no").arg(text);
    flag = yes.contains(word);
    return {};
}

QString read_channel(const QString& text, int& channel) {
    bool ok = false;
    const int number = text.trimmed().toInt(&ok);
    if (!ok || number < 1 || number > 9999)
        return input_text("\"%1\": expected a channel number from 1 to 9999").arg(text);
    channel = number;
    return {};
}

QString read_polarity(const QString& text, Polarity& polarity) {
    const QString word = text.trimmed().toLower();
    if (word.isEmpty() || word == input_text("normal").toLower())
        polarity = Polarity::normal;
    else if (word == input_text("inverted").toLower())
        polarity = Polarity::inverted;
    else
        return input_text("\"%1\": expected normal or inverted").arg(text);
    return {};
}

QString read_player(const Show& show, const QString& text, std::string& performer) {
    const std::string wanted = text.trimmed().toStdString();
    if (wanted.empty()) {
        performer.clear();
        return {};
    }
    for (const Performer& candidate : show.performers)
        if (candidate.id == wanted || report::name_of(candidate) == wanted) {
            performer = candidate.id;
            return {};
        }
    return input_text("\"%1\": no player of this name on the plan").arg(text);
}

/// The kinds of transducer that a cell can turn an input into; anything else is what the inspector is for.
QString read_transducer(const Show& show, const QString& text, Input& input) {
    const QString word = text.trimmed().toLower();
    if (qstr(report::transducer_words(input)).toLower() == word) return {};
    if (word == input_text("line").toLower()) {
        set_transducer(show, input, Line{});
        return {};
    }
    if (word == input_text("pickup").toLower()) {
        if (!pickup_of(input)) set_transducer(show, input, Pickup{});
        return {};
    }
    for (int i = 0; i <= static_cast<int>(PatternName::figure_8); ++i) {
        const Pattern pattern = static_cast<PatternName>(i);
        Microphone microphone = microphone_of(input) ? *microphone_of(input) : Microphone{};
        microphone.pattern = pattern;
        microphone.cupped = false;
        Input candidate = input;
        candidate.transducer = microphone;
        if (word != qstr(report::transducer_words(candidate)).toLower() &&
            word != qstr(report::pattern_words(pattern)).toLower())
            continue;
        set_transducer(show, input, microphone);
        return {};
    }
    return input_text("\"%1\": expected line, pickup or a pattern such as cardioid").arg(text);
}

}  // namespace

QString input_cell(const Show& show, const Input& input, InputsModel::Column column) {
    switch (column) {
        case InputsModel::channel:
            return QString::number(input.channel);
        case InputsModel::name:
            return qstr(input.name);
        case InputsModel::transducer:
            return qstr(report::transducer_words(input));
        case InputsModel::player: {
            const Performer* player = find_by_id(show.performers, input.performer);
            return player ? qstr(report::name_of(*player)) : QString();
        }
        case InputsModel::stand:
            return qstr(input.stand);
        case InputsModel::phantom:
            return yes_no(input.phantom);
        case InputsModel::di:
            return yes_no(input.di);
        case InputsModel::polarity:
            return input.polarity == Polarity::inverted ? input_text("inverted") : input_text("normal");
        case InputsModel::notes:
            return qstr(input.notes);
        case InputsModel::column_count:
            break;
    }
    return {};
}

QString set_input_cell(Show& show, Input& input, InputsModel::Column column, const QString& text) {
    if (text == input_cell(show, input, column)) return {};
    switch (column) {
        case InputsModel::channel:
            return read_channel(text, input.channel);
        case InputsModel::name:
            input.name = text.toStdString();
            break;
        case InputsModel::transducer:
            return read_transducer(show, text, input);
        case InputsModel::player:
            return read_player(show, text, input.performer);
        case InputsModel::stand:
            input.stand = text.toStdString();
            break;
        case InputsModel::phantom:
            return read_flag(text, input.phantom);
        case InputsModel::di:
            return read_flag(text, input.di);
        case InputsModel::polarity:
            return read_polarity(text, input.polarity);
        case InputsModel::notes:
            input.notes = text.toStdString();
            break;
        case InputsModel::column_count:
            break;
    }
    return {};
}

}  // namespace howlmap::app
