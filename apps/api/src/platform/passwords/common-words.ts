/**
 * Words that people take for passwords, in small letters. Written down from memory for this project: the words that
 * every published study of leaked passwords finds again (the word itself, greetings, love, animals, games, sports, the
 * seasons, given names), not taken over from anybody's list. `common.ts` makes the passwords out of them.
 */
export const WORDS: readonly string[] = `
password passwort motdepasse contrasena senha parola wachtwoord haslo heslo salasana kennwort passwd passcode passphrase pass
admin administrator root user username guest test tester testing demo default master login logon signin welcome willkommen bienvenue hello hallo bonjour hola
letmein letmeinnow changeme changeit secret secrets geheim private access control system computer internet server network service support office manager
iloveyou loveyou lovelove love loveme lover lovers mylove ilovehim ilovegod forever always together sweetheart darling honey angel angels baby babygirl babyboy
princess prince queen king beautiful pretty sexy cutie lovely sweetie teddybear butterfly rainbow sunshine sunflower flower flowers blossom diamond crystal
football baseball basketball softball hockey soccer tennis golf rugby cricket volleyball swimming running skating surfing fishing hunting racing champion winner
monkey dragon tiger tigers lion lions eagle eagles falcon panther leopard cheetah elephant giraffe dolphin penguin kitten kitty puppy doggie horses pony rabbit turtle spider
snoopy buster bailey maggie lucky smokey shadow ginger pepper cookie coffee chocolate banana orange apple cherry strawberry peaches mango lemon cheese butter pickle
starlight moonlight midnight morning evening summer winter spring autumn january february march april june july august september october november december
monday tuesday wednesday thursday friday saturday sunday weekend holiday birthday christmas halloween easter
freedom liberty justice peace hope faith grace blessed blessing heaven jesus christ church bible prayer spirit miracle destiny journey
money dollar million rich gold golden silver platinum bronze casino poker jackpot lottery bonus
hunter ranger soldier warrior knight ninja samurai pirate wizard magic merlin phoenix vampire monster zombie killer danger devil demon ghost
rocket matrix galaxy universe planet saturn jupiter mercury neptune pluto apollo mars venus comet star stars starfish
music guitar piano drummer dancer dance singer metal rock punk jazz disco
school student teacher college university library science history english mathematics physics biology
garden gardener gardening greenhouse glasshouse polytunnel tomato tomatoes potato carrot onion pumpkin cabbage lettuce cucumber allotment compost tulip rosebud daisy violet lavender thyme rosemary basil
family mother father mommy daddy mummy mama papa sister brother grandma grandpa friend friends bestfriend children
america england london paris berlin madrid lisbon moscow dublin scotland ireland canada mexico brazil australia germany france italy spain portugal poland sweden norway denmark finland
california texas florida newyork chicago boston dallas denver phoenixaz houston seattle
black white yellow purple violetred green blue brown orangered silverfox bluebird blackcat whitecat redrose
trustno noone nobody nothing whatever whatever1 anything something everything because people person human
super superstar superhero hero power powerful strong turbo maximum ultimate extreme legend genius
hardcore gangster player playboy bigboy bigdaddy badboy badgirl goodgirl goodboy lilman
abc abcd abcde abcdef abcdefg abcabc aabbcc abc123 abcd1234 a1b2c3 a1b2c3d4 a1s2d3f4 qwe qwe123 qweasd qweasdzxc asd asd123 asdasd zxc zxc123 zxczxc
qwert qwerty qwertz azerty asdf asdfg asdfgh zxcv zxcvb zxcvbn poiuy lkjhg mnbvc qazwsx qazwsxedc wsxedc edcrfv
michael michelle jennifer jessica ashley amanda daniel andrew joshua matthew justin robert thomas william charlie charles george richard jordan jackson jason
anthony nicole melissa stephanie heather samantha elizabeth victoria alexander alexandra alexandre alexis nicholas christopher christian christina christine
jonathan patrick patricia benjamin brandon brian steven stephen kevin david james john johnny joseph joshua12 martin marcus marina maria mariana marie
sarah sandra sabrina samuel sophie sophia sebastian simon susan taylor tyler travis trevor vanessa veronica vincent vivian walter wendy zachary
barbara bernard bradley brenda brittany bruce cameron carlos carmen caroline catherine claudia connor corey cynthia danielle deborah dennis diana dominic donald
dorothy douglas dylan edward eleanor emily eric erica ethan eugene evelyn felix fernando florence francis frank franklin gabriel gabriela garrett gloria gregory
hannah harold harrison harry helen henry hector isabel isabella jacob jacqueline janet jasmine jeffrey jeremy jerome joanna jonas julia julian juliana karen
katherine kathryn kathleen keith kelly kenneth kimberly kristen kristina laura lauren lawrence leonard leonardo leslie lillian linda lindsay lorenzo louis louise lucas
lucia madeline madison malcolm manuel margaret marilyn marshall marvin mathew maurice megan melanie miguel miranda mitchell molly monica morgan murphy nancy natalia
natalie natasha nathan nathaniel norman oliver olivia oscar pamela patience pauline pedro peter phillip preston rachel raymond rebecca ricardo roberto rodrigo roger
ronald rosario roxanne russell ryan sabine salvador savannah scott sergio shannon sharon shawn shirley sierra stanley stella stewart sydney tamara teresa theodore theresa
tiffany timothy tristan ursula valentina valentine valerie virginia wesley yolanda yvonne
andrea antonio angela angelo angelina anna annette arthur austin alejandro alfredo alice allison andreas
thunder lightning storm hurricane tornado volcano earthquake ocean river mountain forest desert island beach sunset sunrise
cowboy cowgirl indian viking pilot captain sailor doctor nurse police fireman engineer driver trucker mechanic farmer
corvette mustang camaro motorcycle bicycle truck jeep train airplane helicopter
pokerface lollipop marshmallow cupcake pancake popcorn candy sugar sweets icecream cinnamon vanilla
cowabunga abracadabra opensesame sesame password1 passw0rd letmein1 welcome1 administrator1
qwerty123 killer123 monkey123 dragon123 loveyou123 test1234 temp temporary temppass newpass newpassword mypassword yourpassword thepassword nopassword
`
  .trim()
  .split(/\s+/);

/** What people put behind a word when digits or signs are asked for. Years come on top. */
export const ENDINGS: readonly string[] =
  '1 2 3 4 5 6 7 8 9 0 11 12 13 21 22 23 33 44 55 66 69 77 88 99 00 01 02 10 007 100 101 111 123 321 222 333 777 999 1234 4321 12345 123456 1234567 12345678 123456789 ! !! !1 1! 12! 123! 1234! @1 @123 #1 #123 ? . * _1 _123 -1'.split(
    ' ',
  );
