// SPDX-License-Identifier: GPL-3.0-or-later
// A player speaks to a player: German texts say "du", everywhere.
#include <QDir>
#include <QDirIterator>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include "tests/support/registry.h"

namespace {

const QString kResources = QStringLiteral(HOWLMAP_SOURCE_DIR) + QStringLiteral("/resources/");

/// The formal address inside a sentence. At its beginning "Sie" may be anybody, so the English decides there.
bool formal(const QString& german, const QString& english = {}) {
    static const QRegularExpression inside(QStringLiteral("[^.!?:…>\\s]\\s+(?:Sie|Ihnen|Ihr(?:e[mnrs]?)?)\\b"),
                                           QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression anywhere(QStringLiteral("\\b(?:Sie|Ihnen|Ihr(?:e[mnrs]?)?)\\b")),
        reader(QStringLiteral("\\byou(?:rs?)?\\b"), QRegularExpression::CaseInsensitiveOption);
    return german.contains(inside) || (english.contains(reader) && german.contains(anywhere));
}

QString text_of(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

}  // namespace

class GermanFormTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void theFormalAddressIsSeen() {
        QVERIFY(formal(QStringLiteral("Drehen Sie das Mikrofon.")));
        QVERIFY(formal(QStringLiteral("Das liegt in Ihrem Ordner.")));
        QVERIFY(formal(QStringLiteral("Ihre Vokale liegen darunter."), QStringLiteral("Your vowels are under it.")));
        QVERIFY(!formal(QStringLiteral("Sie bleibt, wo sie ist."), QStringLiteral("It was left where it is.")));
        QVERIFY(!formal(QStringLiteral("Die Show ist alt. Ihr Ordner ist schreibgeschützt.")));
        QVERIFY(!formal(QStringLiteral("Drehe das Mikrofon.")));
    }

    void theWindowSaysDu() {
        QFile file(kResources + QStringLiteral("translations/howlmap_de.ts"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&file);
        QString english;
        int seen = 0;
        while (!xml.atEnd()) {
            if (!xml.readNextStartElement()) continue;
            if (xml.name() == u"source") english = xml.readElementText();
            if (xml.name() != u"translation") continue;
            const QString german = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            QVERIFY2(!formal(german, english), qPrintable(german));
            ++seen;
        }
        QVERIFY(seen > 1500);
    }

    void soDoHelpLessonsAndDesktopFiles() {
        int seen = 0;
        for (const char* folder : {"help/de", "lessons", "desktop", "presets", "stages"})
            for (QDirIterator it(kResources + QLatin1StringView(folder), QDir::Files); it.hasNext();) {
                const QString name = it.next();
                static const QRegularExpression tags(QStringLiteral("</?(?:b|i|em|strong|a)\\b[^>]*>"));
                const QString text = text_of(name).remove(tags);
                QVERIFY2(!formal(text), qPrintable(name));
                ++seen;
            }
        QVERIFY(seen > 30);
    }
};

HOWLMAP_TEST(GermanFormTest)
#include "test_german_form.moc"
