// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/symbol_choice.h"

#include <array>

#include "app/export/symbol.h"

namespace howlmap::app {
namespace {

/// The key "symbol" that a preset may carry, without its quotes.
QString wished_symbol(const Extras& extras) {
    for (const auto& [key, json] : extras)
        if (key == "symbol" && json.size() > 2) return QString::fromStdString(json.substr(1, json.size() - 2));
    return {};
}

struct Word {
    const char *word, *symbol;
};
constexpr std::array kInstruments = {
    Word{"violin", "violin"},       Word{"fiddle", "violin"},           Word{"viola", "viola"},
    Word{"cello", "cello"},         Word{"double bass", "double_bass"}, Word{"upright", "double_bass"},
    Word{"guitar", "guitar"},       Word{"mandolin", "mandolin"},       Word{"bouzouki", "mandolin"},
    Word{"banjo", "banjo"},         Word{"ukulele", "guitar"},          Word{"harp", "harp"},
    Word{"accordion", "accordion"}, Word{"bass", "double_bass"},
};

QString instrument_in(const QString& text) {
    const QString words = text.toLower();
    for (const Word& entry : kInstruments)
        if (words.contains(QLatin1String(entry.word))) return QLatin1String(entry.symbol);
    return {};
}

QString first_known(std::initializer_list<QString> wishes, const QString& otherwise) {
    for (const QString& wish : wishes)
        if (has_symbol(wish)) return wish;
    return otherwise;
}
}  // namespace

QString symbol_of(const Loudspeaker& loudspeaker) {
    if (const QString wish = wished_symbol(loudspeaker.extras); has_symbol(wish)) return wish;
    switch (loudspeaker.kind) {
        case LoudspeakerKind::wedge:
            return QStringLiteral("wedge");
        case LoudspeakerKind::side_fill:
            return QStringLiteral("side_fill");
        case LoudspeakerKind::drum_fill:
            return QStringLiteral("drum_fill");
        case LoudspeakerKind::front_fill:
            return QStringLiteral("front_fill");
        case LoudspeakerKind::flown_fill:
            return QStringLiteral("flown_fill");
        case LoudspeakerKind::main:
            return QStringLiteral("main");
        case LoudspeakerKind::sub:
            return QStringLiteral("sub");
        case LoudspeakerKind::combo_amp:
            return QStringLiteral("combo_amp");
    }
    return {};
}

QString symbol_of(const Input& input) {
    const QString wish = wished_symbol(input.extras);
    if (microphone_of(input)) return first_known({wish}, QStringLiteral("microphone"));
    if (is_line(input)) return first_known({wish}, QStringLiteral("line"));
    const QString by_words = instrument_in(QString::fromStdString(input.name + ' ' + input.id));
    return first_known({wish, by_words}, QStringLiteral("guitar"));
}

QString symbol_of(const Performer& performer) {
    return first_known({wished_symbol(performer.extras)}, QStringLiteral("player"));
}

QString symbol_of(const Backline& backline) {
    const QString kind = QString::fromStdString(backline.kind);
    return first_known({wished_symbol(backline.extras), kind}, QStringLiteral("backline"));
}

QString symbol_of(const Mark& mark) {
    return first_known({wished_symbol(mark.extras), QString::fromStdString(mark.kind)}, QStringLiteral("note"));
}

}  // namespace howlmap::app
