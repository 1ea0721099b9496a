// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFile>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>

#include "app/settings/language.h"
#include "app/window/recovery_dialog.h"
#include "core/units/translate.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

struct Text {
    QString context, source, translation;
    bool unfinished = false;
};

QList<Text> texts_of(const QString& file) {
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) return {};
    QXmlStreamReader xml(&in);
    QList<Text> texts;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"name") context = xml.readElementText();
        if (xml.name() == u"source") texts.append({context, xml.readElementText(), {}, false});
        if (xml.name() == u"translation") {
            texts.last().unfinished = xml.attributes().hasAttribute(QStringLiteral("type"));
            texts.last().translation = xml.readElementText();
        }
    }
    return texts;
}

/// Places to fill in, sorted: %1, {:.1f}.
QStringList places(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%\\d|\\{[^}]*\\}"));
    QStringList found;
    for (auto matches = place.globalMatch(text); matches.hasNext();) found.append(matches.next().captured());
    found.sort();
    return found;
}

}  // namespace

class TestTranslations : public QObject {
    Q_OBJECT
    const QString file_ = QStringLiteral(HOWLMAP_SOURCE_DIR "/resources/translations/howlmap_de.ts");

  private Q_SLOTS:
    void germanIsFinishedAndFillsTheSamePlaces() {
        const auto texts = texts_of(file_);
        QVERIFY(texts.size() > 500);
        for (const Text& text : texts) {
            QVERIFY2(!text.unfinished && !text.translation.isEmpty(), qPrintable(text.context + u": " + text.source));
            QCOMPARE(places(text.translation), places(text.source));
            QVERIFY2(text.source.count(u'&') == text.translation.count(u'&'), qPrintable(text.source));
        }
    }
    void germanIsSpokenByWindowAndCore() {
        speak(QLocale(QLocale::German));
        QCOMPARE(QCoreApplication::translate("howlmap::app::StatusFigures", "Margin to count on"),
                 QStringLiteral("Verlässliche Reserve"));
        QCOMPARE(QCoreApplication::translate("actions", "&Undo"), QStringLiteral("&Rückgängig"));
        QCOMPARE(RecoveryDialog::tr("never saved"), QStringLiteral("nie gespeichert"));
        QCOMPARE(translate("report", "no loop"), std::string("keine Schleife"));
        set_translator({});
        qDeleteAll(QCoreApplication::instance()->findChildren<QTranslator*>());
    }
};

HOWLMAP_TEST(TestTranslations)

}  // namespace howlmap::app

#include "test_translations.moc"
