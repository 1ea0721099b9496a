// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/setting_tables.h"

#include <QCoreApplication>
#include <map>
#include <set>

#include "app/settings/figures.h"
#include "core/listening/send_model.h"
#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {
constexpr std::size_t kMixesAside = 4;

QString setting_text(const char* english) { return QCoreApplication::translate("cures", english); }

/// By place of the mix in the show, then by row.
using Columns = std::map<int, std::map<int, QString>>;

QString cell(const char* tag, const QString& words) {
    return QStringLiteral("<%1 align=\"right\">&nbsp;&nbsp;%2</%1>").arg(QLatin1StringView(tag), words);
}

/// One table; `title(row)` heads a row.
template <class Title>
QString table(const Show& show, const Columns& columns, const Title& title) {
    std::set<int> rows;
    for (const auto& [mix, cells] : columns)
        for (const auto& [row, words] : cells) rows.insert(row);
    QString lines = QStringLiteral("<tr><td></td>");
    for (const auto& [mix, cells] : columns)
        lines += cell(
            "th",
            setting_text(QT_TRANSLATE_NOOP("cures", "mix %1")).arg(show.mixes[static_cast<std::size_t>(mix)].number));
    for (const int row : rows) {
        lines += QStringLiteral("</tr><tr><td>%1</td>").arg(title(row).toHtmlEscaped());
        for (const auto& [mix, cells] : columns) lines += cell("td", cells.contains(row) ? cells.at(row) : QString());
    }
    return QStringLiteral("<table>%1</tr></table>").arg(lines);
}

/// As many tables as it takes.
template <class Title>
QString tables(const Show& show, const Columns& columns, const Title& title) {
    QString all;
    Columns aside;
    for (const auto& column : columns) {
        aside.insert(column);
        if (aside.size() < kMixesAside) continue;
        all += table(show, aside, title);
        aside.clear();
    }
    return aside.empty() ? all : all + table(show, aside, title);
}

double fader_db(const Mix* mix, int band) {
    return mix && mix->graphic_eq.contains(band) ? mix->graphic_eq.at(band) : 0.0;
}

QString fader_tables(const Show& from, const Show& to) {
    Columns columns;
    for (std::size_t m = 0; m < to.mixes.size(); ++m)
        for (int band = 0; band < static_cast<int>(kThirdOctaves); ++band) {
            const double db = fader_db(&to.mixes[m], band);
            if (db != fader_db(find_by_id(from.mixes, to.mixes[m].id), band))
                columns[static_cast<int>(m)][band] = number_text(db, 1);
        }
    return tables(to, columns,
                  [](int band) { return band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)]); });
}

QString send_tables(const Show& from, const Show& to) {
    Columns columns;
    for (const SendChange& change : send_changes(from, to)) {
        columns[index_by_id(to.mixes, change.mix)][index_by_id(to.inputs, change.input)] =
            decimal_text(change.to_db, 1);
    }
    if (columns.empty()) return {};
    return setting_text(QT_TRANSLATE_NOOP("cures", "Then set the sends, in dB, so that it stays as loud:")) +
           tables(to, columns, [&](int input) { return name_text(to, to.inputs[static_cast<std::size_t>(input)].id); });
}
}  // namespace

QString setting_tables(const Show& from, const Show& to) { return fader_tables(from, to) + send_tables(from, to); }

}  // namespace howlmap::app
