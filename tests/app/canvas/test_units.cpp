// SPDX-License-Identifier: GPL-3.0-or-later
// The show says in which units it is shown: that is one line of its file, and nothing else of it.
#include <QComboBox>
#include <QLineEdit>
#include <QUndoStack>

#include "app/window/file_actions.h"
#include "core/file/write.h"
#include "tests/app/canvas/hands.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QStringList lines_of(const Show& show) { return QString::fromStdString(write_show(show)).split(u'\n'); }

/// What stands in the fields of the Inspector.
QString figures_of(QWidget& inspector) {
    QStringList texts;
    for (FieldRow* row : inspector.findChildren<FieldRow*>())
        for (const auto* edit : row->findChildren<QLineEdit*>()) texts.append(edit->text());
    return texts.join(u'|');
}

}  // namespace

class TestUnits : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void other_units_change_one_line_of_the_file() {
        MainWindow window;
        window.resize(1280, 800);
        window.show();
        QVERIFY(window.files().open_example(QStringLiteral(":/examples/folk-band-six.howlmap")));
        window.document().set_clean();
        Hands hands(window);
        const QStringList before = lines_of(window.document().show());
        QWidget* inspector = hands.panel("inspector");
        const QString in_metres = figures_of(*inspector);
        QVERIFY(in_metres.contains(QStringLiteral(" m")) && !in_metres.contains(QChar(0x2032)));
        for (const Field& field : show_fields())
            if (field.label == QStringLiteral("Lengths in"))
                hands.enter(field, field.choices(window.document().show())[1].value);
        QVERIFY(window.document().show().display.units == Units::imperial);
        QVERIFY(window.isWindowModified());
        // The same field still has the keys, though the Inspector was made anew.
        QVERIFY(qobject_cast<QComboBox*>(QApplication::focusWidget()));
        QTRY_VERIFY(figures_of(*hands.panel("inspector")).contains(QChar(0x2032)));
        const QStringList after = lines_of(window.document().show());
        QCOMPARE(after.size(), before.size());
        QStringList changed;
        for (int i = 0; i < after.size(); ++i)
            if (after[i] != before[i]) changed.append(before[i] + u'>' + after[i]);
        QCOMPARE(changed.size(), 1);
        QVERIFY2(changed.first().contains(QStringLiteral("units")), qPrintable(changed.first()));
        // Through every field by Tab: what is only looked at in feet stays the same metres.
        for (int i = 0; i < 40; ++i) hands.key(Qt::Key_Tab);
        QCOMPARE(lines_of(window.document().show()), after);
        hands.press(QKeySequence::Undo);
        QCOMPARE(lines_of(window.document().show()), before);
        QVERIFY(!window.isWindowModified());
    }
};

HOWLMAP_TEST(TestUnits)

}  // namespace howlmap::app

#include "test_units.moc"
