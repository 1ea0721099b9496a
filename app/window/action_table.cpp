// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/action_table.h"

#include <QAction>
#include <QWidget>

#include "app/settings/icons.h"

namespace howlmap::app {
namespace {

struct Row {
    const char* id;
    const char* text;
    QKeySequence::StandardKey standard;
    const char* keys;  ///< used where the platform has no standard key
    const char* icon;
    const char* sentence;
    bool checkable = false;
};

constexpr auto kNone = QKeySequence::UnknownKey;

const Row kRows[] = {
    {"file.new", QT_TR_NOOP("&New show"), QKeySequence::New, "Ctrl+N", "new", QT_TR_NOOP("Starts an empty show.")},
    {"file.open", QT_TR_NOOP("&Open..."), QKeySequence::Open, "Ctrl+O", "open",
     QT_TR_NOOP("Opens a show from a file.")},
    {"file.save", QT_TR_NOOP("&Save"), QKeySequence::Save, "Ctrl+S", "save",
     QT_TR_NOOP("Saves the show; the file holds the old or the new show, never half of one.")},
    {"file.save_as", QT_TR_NOOP("Save &as..."), QKeySequence::SaveAs, "Ctrl+Shift+S", "",
     QT_TR_NOOP("Saves the show under another name and goes on with that file.")},
    {"file.revert", QT_TR_NOOP("Re&vert"), kNone, "", "", QT_TR_NOOP("Goes back to the show as the file holds it.")},
    {"file.advance", QT_TR_NOOP("A&dvance sheet..."), kNone, "Ctrl+T", "",
     QT_TR_NOOP("The sheet for the venue's engineer: pages, print, PDF, lists for a spreadsheet.")},
    {"file.close", QT_TR_NOOP("&Close"), QKeySequence::Close, "Ctrl+W", "close",
     QT_TR_NOOP("Closes this show and starts an empty one.")},
    {"file.quit", QT_TR_NOOP("&Quit"), QKeySequence::Quit, "Ctrl+Q", "", QT_TR_NOOP("Closes the window.")},
    {"edit.undo", QT_TR_NOOP("&Undo"), QKeySequence::Undo, "Ctrl+Z", "undo", QT_TR_NOOP("Takes the last step back.")},
    {"edit.redo", QT_TR_NOOP("&Redo"), QKeySequence::Redo, "Ctrl+Shift+Z", "redo",
     QT_TR_NOOP("Does the step again that was taken back.")},
    {"edit.preferences", QT_TR_NOOP("&Preferences..."), QKeySequence::Preferences, "Ctrl+,", "settings",
     QT_TR_NOOP("Light or dark, units of new shows, how soon a copy is kept aside.")},
    {"view.plan_alone", QT_TR_NOOP("Plan &alone"), kNone, "F9", "plan_only",
     QT_TR_NOOP("Hides all panels, or brings them back."), true},
    {"view.full_screen", QT_TR_NOOP("&Full screen"), QKeySequence::FullScreen, "F11", "",
     QT_TR_NOOP("Uses the whole screen, for a class or a projector."), true},
    {"view.reset", QT_TR_NOOP("&Reset panels"), kNone, "", "",
     QT_TR_NOOP("Puts all panels back where they were at first.")},
    {"lesson.open", QT_TR_NOOP("&Open the lesson"), kNone, "F8", "lesson",
     QT_TR_NOOP("One loudspeaker and one microphone from the side: why placement matters, to see and to hear.")},
    {"lesson.show", QT_TR_NOOP("&Show in the lesson"), kNone, "Shift+F8", "",
     QT_TR_NOOP("Puts the selected loudspeaker and microphone, or the selected ring's, on the bench of the lesson.")},
    {"lesson.hear", QT_TR_NOOP("&Hear the stage..."), kNone, "F7", "play",
     QT_TR_NOOP("Plays all loops of this show as they are set, or raised.")},
    {"help.contents", QT_TR_NOOP("&Help"), QKeySequence::HelpContents, "F1", "help",
     QT_TR_NOOP("Opens the help at the place that explains what has the focus.")},
    {"help.whats_this", QT_TR_NOOP("&What's this?"), QKeySequence::WhatsThis, "Shift+F1", "",
     QT_TR_NOOP("Click anything to have it explained.")},
    {"help.tour", QT_TR_NOOP("&Three steps"), kNone, "", "",
     QT_TR_NOOP("Shows the three steps of the first start again.")},
    {"help.cautions", QT_TR_NOOP("&Cautions"), kNone, "", "warning",
     QT_TR_NOOP("Shows what this program is not and what can hurt you.")},
    {"help.about", QT_TR_NOOP("&About Howlmap"), kNone, "", "",
     QT_TR_NOOP("Version, licences, and where files are kept.")},
};

QKeySequence keys_of(const Row& row) {
    if (row.standard != kNone)
        if (const auto keys = QKeySequence::keyBindings(row.standard); !keys.isEmpty()) return keys.first();
    return QKeySequence(QString::fromLatin1(row.keys), QKeySequence::PortableText);
}

QAction* make(const Row& row, QWidget* owner) {
    auto* action = new QAction(ActionTable::tr(row.text), owner);
    action->setObjectName(QString::fromLatin1(row.id));
    action->setShortcut(keys_of(row));
    action->setCheckable(row.checkable);
    if (*row.icon) action->setIcon(icon(QString::fromLatin1(row.icon)));
    explain(action, ActionTable::tr(row.sentence));
    owner->addAction(action);
    return action;
}

}  // namespace

void explain(QAction* action, const QString& sentence) {
    QString name = action->text();
    name.remove(u'&').remove(QStringLiteral("..."));
    const QString keys = action->shortcut().toString(QKeySequence::NativeText);
    action->setToolTip(keys.isEmpty() ? name : QStringLiteral("%1 (%2)").arg(name, keys));
    action->setStatusTip(sentence);
    action->setWhatsThis(
        QStringLiteral("<b>%1</b><p>%2</p>").arg(action->toolTip().toHtmlEscaped(), sentence.toHtmlEscaped()));
}

ActionTable::ActionTable(QWidget* owner) : QObject(owner) {
    for (const Row& row : kRows) actions_.insert(QString::fromLatin1(row.id), make(row, owner));
}

QAction* ActionTable::at(const char* id) const {
    QAction* action = actions_.value(QString::fromLatin1(id));
    Q_ASSERT_X(action, "ActionTable::at", id);
    return action;
}

QAction* ActionTable::on(const char* id, std::function<void()> what) {
    QAction* action = at(id);
    connect(action, &QAction::triggered, this, [what = std::move(what)] { what(); });
    return action;
}

}  // namespace howlmap::app
