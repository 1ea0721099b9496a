// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/about.h"

#include <QCoreApplication>
#include <QMessageBox>

#include "app/document/autosave.h"
#include "app/settings/icons.h"
#include "app/settings/preferences.h"

namespace howlmap::app {
namespace {

struct Library {
    const char *name, *licence;
};

/// What the program is linked with or compiled from.
constexpr Library kLibraries[] = {
    {"Qt 6", "LGPL-3.0"},          {"QCustomPlot 2", "GPL-3.0-or-later"},
    {"Eigen 3", "MPL-2.0"},        {"oneTBB", "Apache-2.0"},
    {"Highway", "Apache-2.0"},     {"Boost", "BSL-1.0"},
    {"NLopt", "MIT and LGPL-2.1"}, {"libsndfile", "LGPL-2.1-or-later"},
    {"Kiss FFT", "BSD-3-Clause"},  {"JSON for Modern C++", "MIT"},
    {"tl::expected", "CC0-1.0"},   {"fmt", "MIT"},
};

QString row(const QString& left, const QString& right) {
    return QStringLiteral("<tr><td>%1&nbsp;&nbsp;</td><td>%2</td></tr>")
        .arg(left.toHtmlEscaped(), right.toHtmlEscaped());
}

QString about(const char* english) { return QCoreApplication::translate("about", english); }

}  // namespace

QString about_text() {
    QString text = QStringLiteral("<h3>Howlmap %1</h3>").arg(QCoreApplication::applicationVersion());
    text += about(QT_TRANSLATE_NOOP(
        "about",
        "<p>Where things stand on a stage, which frequency rings first, and what to do about it.</p>"
        "<p>Free software under the GNU General Public License, version 3 or later, without any warranty. "
        "Examples, presets and symbols are CC0.</p>"));
    text += about(QT_TRANSLATE_NOOP("about", "<p>Libraries and their licences:</p>")) + QStringLiteral("<table>");
    for (const Library& library : kLibraries)
        text += row(QString::fromUtf8(library.name), QString::fromUtf8(library.licence));
    text += QStringLiteral("</table>") + about(QT_TRANSLATE_NOOP("about", "<p>Where files are kept:</p>")) +
            QStringLiteral("<table>");
    text += row(about(QT_TRANSLATE_NOOP("about", "Settings")), settings()->fileName());
    text += row(about(QT_TRANSLATE_NOOP("about", "Copies aside")), Autosave::folder());
    return text + QStringLiteral("</table>");
}

void show_about(QWidget* parent) {
    QMessageBox box(QMessageBox::NoIcon, about(QT_TRANSLATE_NOOP("about", "About Howlmap")), about_text(),
                    QMessageBox::Close, parent);
    box.setObjectName(QStringLiteral("about"));
    box.setIconPixmap(icon(QStringLiteral("org.howlmap.Howlmap")).pixmap(64, 64));
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    box.exec();
}

}  // namespace howlmap::app
